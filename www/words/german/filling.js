// German for the cautions, and the order of a first fill.

/** @type {Record<string, string>} */
export const FILLING = {
  // cautions
  "The results are estimates from the numbers you typed. You test the tubes, and you carry the risk; there is no warranty.":
    "Die Ergebnisse sind Schätzungen aus den eingegebenen Zahlen. Wer die Rohre baut, prüft sie selbst und trägt das Risiko; es gibt keine Gewährleistung.",
  "Measure your own fittings and ports. The shipped figures are middling ones and no maker's.":
    "Die eigenen Verschraubungen und Anschlüsse messen. Die mitgelieferten Werte sind mittlere und von keinem Hersteller.",
  "Print a short piece first and try it in the fitting before you print the whole loop.":
    "Zuerst ein kurzes Stück drucken und in der Verschraubung probieren, bevor der ganze Kreislauf gedruckt wird.",
  "Pressure-test every tube outside the machine, filled with water, before it goes in; then run the loop for a day with only the pump powered and paper towels underneath.":
    "Jedes Rohr außerhalb des Rechners mit Wasser gefüllt auf Druck prüfen, bevor es hineinkommt; dann den Kreislauf einen Tag lang laufen lassen, nur die Pumpe unter Strom und Papiertücher darunter.",
  "Unplug the mains while you fill or test. After a spill, let everything dry for a day or two.":
    "Beim Füllen und Prüfen den Netzstecker ziehen. Nach einem Verschütten alles ein bis zwei Tage trocknen lassen.",
  "With air, stay at or below 0.5 bar, use a regulator and eye protection, and never a compressor alone.":
    "Mit Luft bei höchstens 0,5 bar bleiben, Druckminderer und Schutzbrille benutzen, nie nur einen Kompressor.",
  "Many resins and PLA soften at or below 60 °C. Compare the material's own data sheet with your fault temperature.":
    "Viele Harze und PLA werden bei 60 °C oder darunter weich. Das Datenblatt des Materials mit der Störfalltemperatur vergleichen.",
  "Liquid resin can cause a lasting skin allergy: wear nitrile gloves, and wash skin with soap and water, not solvent.":
    "Flüssiges Harz kann eine bleibende Hautallergie auslösen: Nitrilhandschuhe tragen und Haut mit Wasser und Seife waschen, nicht mit Lösemittel.",
  "Isopropyl alcohol burns: its flash point is 12 °C (NIOSH Pocket Guide). Keep flames and sparks away and air the room.":
    "Isopropanol brennt: sein Flammpunkt ist 12 °C (NIOSH Pocket Guide). Flammen und Funken fernhalten und den Raum lüften.",
  "Cure resin tubes fully, inside and outside, and flush the bore: uncured resin goes into the coolant.":
    "Harzrohre innen und außen vollständig aushärten und die Bohrung spülen: nicht ausgehärtetes Harz gelangt ins Kühlmittel.",
  "Coolants with glycol, alcohol, biocide or dye can crack some plastics: soak a test piece for three days first.":
    "Kühlmittel mit Glykol, Alkohol, Biozid oder Farbstoff können manche Kunststoffe reißen lassen: zuerst ein Probestück drei Tage einlegen.",
  "Tubes printed by this are not for drinking water.":
    "Hiermit gedruckte Rohre sind nicht für Trinkwasser.",
  // first_fill
  "Unplug the machine from the mains and leave it so until the loop is dry and tested.":
    "Den Netzstecker des Rechners ziehen und gezogen lassen, bis der Kreislauf trocken und geprüft ist.",
  "No power to anything but the pump before the last step.":
    "Vor dem letzten Schritt kein Strom an irgendetwas außer der Pumpe.",
  "Put on eye protection. Close the loop, with a plug or valve at every open port.":
    "Schutzbrille aufsetzen. Den Kreislauf schließen, mit Stopfen oder Ventil an jedem offenen Anschluss.",
  "A part that lets go under air pressure flies.":
    "Ein Teil, das unter Luftdruck nachgibt, fliegt.",
  "Put air in by a hand pump, or by a regulator with a relief valve set to half a bar (50 kPa) at most.":
    "Luft mit einer Handpumpe hineingeben oder mit einem Druckminderer, dessen Überdruckventil auf höchstens ein halbes Bar (50 kPa) gestellt ist.",
  "Air stores energy where coolant does not. Never connect a compressor directly.":
    "Luft speichert Energie, wo Kühlmittel es nicht tut. Nie unmittelbar einen Kompressor anschließen.",
  "Wait 5 minutes, so that rings settle and the air takes the loop's temperature; then read gauge and thermometer.":
    "5 Minuten warten, damit sich die Ringe setzen und die Luft die Temperatur des Kreislaufs annimmt; dann Manometer und Thermometer ablesen.",
  "Hold it for 15 to 60 minutes out of sun and draught, then read both again; the page reckons with the readings.":
    "15 bis 60 Minuten ohne Sonne und Zugluft halten, dann beide noch einmal ablesen; die Seite rechnet mit den Ablesungen.",
  "Where it loses more than it may, brush soapy water on one joint after another and watch for bubbles; dry them well.":
    "Wo er mehr verliert, als er darf, eine Verbindung nach der anderen mit Seifenwasser bestreichen und auf Blasen achten; danach gut trocknen.",
  "Let the pressure out before you turn a fitting.":
    "Den Druck ablassen, bevor eine Verschraubung gedreht wird.",
  "Let the air out slowly. Fill the reservoir with coolant, below its rim.":
    "Die Luft langsam ablassen. Den Ausgleichsbehälter mit Kühlmittel füllen, bis unter den Rand.",
  "Power the pump alone, from a separate supply, in pulses of a few seconds; fill up in between.":
    "Nur die Pumpe unter Strom setzen, aus einem eigenen Netzteil, in Stößen von einigen Sekunden; dazwischen nachfüllen.",
  "Never let the pump run dry.": "Die Pumpe nie trocken laufen lassen.",
  "Tilt and turn the machine until no more bubbles come, and fill up to the mark.":
    "Den Rechner kippen und drehen, bis keine Blasen mehr kommen, und bis zur Marke auffüllen.",
  "Let the pump run alone for 24 hours with paper towels under every joint, and look at each of them.":
    "Die Pumpe 24 Stunden allein laufen lassen, mit Papiertüchern unter jeder Verbindung, und jedes davon ansehen.",
  "Check the level once more. Only then plug in the machine; look again after its first warm hours.":
    "Den Füllstand noch einmal prüfen. Erst dann den Rechner einstecken; nach den ersten warmen Stunden wieder nachsehen.",
};
