// German for the form.

/** @type {Record<string, string>} */
export const FORM = {
  // form/adder.js
  "{0}: which": "{0}: Auswahl",
  // form/card.js
  "Remove {0} {1}": "{0} {1} entfernen",
  "Fold {0} {1}": "{0} {1} zuklappen",
  "Unfold {0} {1}": "{0} {1} aufklappen",
  "{0} {1}, not named yet": "{0} {1}, noch ohne Namen",
  "Move {0} up": "{0} nach oben",
  "Move {0} down": "{0} nach unten",
  "{0} to fill in": "{0} auszufüllen",
  // form/coil.js
  "right": "rechts",
  "left": "links",
  // form/coordinate.js
  "{0} from port": "{0} ab Anschluss",
  "{0} counts from": "{0} zählt ab",
  "the datum": "dem Bezugspunkt",
  "{0} (not there)": "{0} (nicht vorhanden)",
  // form/coupon-picture.js
  "stick {0}: {1}": "Stab {0}: {1}",
  "{0} mm with {1}": "{0} mm: {1}",
  "ring|rings": "Ring|Ringe",
  "The coupon, {0}": "Die Passprobe, {0}",
  "{0} mm: {1}": "{0} mm: {1}",
  // form/direction.js
  "other": "andere",
  // form/facts.js
  "All figures, and where they come from": "Alle Werte und ihre Herkunft",
  "Where the figures come from": "Herkunft der Werte",
  "none is named": "keine genannt",
  "not known": "nicht bekannt",
  // form/field.js
  "To fill in": "Ausfüllen",
  "Can be {0}.": "Möglich: {0}.",
  // form/first-fill.js
  "Care:": "Vorsicht:",
  "mains unplugged, eye protection on, half a bar (50 kPa) of air at most, by a hand pump or a regulator with a relief valve; never a compressor directly.":
    "Netzstecker gezogen, Schutzbrille auf, höchstens ein halbes Bar (50 kPa) Luft, von einer Handpumpe oder einem Druckminderer mit Überdruckventil; nie unmittelbar von einem Kompressor.",
  "The usual order of a first fill and leak test":
    "Die übliche Reihenfolge von Erstbefüllung und Dichtheitsprüfung",
  "Common practice, no source. Local codes, the data sheets of your parts and licensed practice go first.":
    "Allgemein üblich, ohne Quelle. Örtliche Vorschriften, die Datenblätter der Bauteile und die Arbeit zugelassener Fachleute gehen vor.",
  // form/fit.js
  "Outer diameters": "Außendurchmesser",
  "Bores": "Innendurchmesser",
  "Lengths": "Längen",
  "Fit coupon": "Passprobe",
  "{0} sizes, {1} mm apart: outside {2} to {3} mm.": "{0} Größen, je {1} mm auseinander: außen {2} bis {3} mm.",
  "uncured resin can cause a lasting allergy: gloves on, and wash and cure the coupon before you try it. Treat it as you will the tubes: the same supports, layers and curing, stood as their ends will stand, and sanded before you measure only if you will sand the tubes. Push ends in by hand, never by force.":
    "nicht ausgehärtetes Harz kann eine bleibende Allergie auslösen: Handschuhe an, und die Passprobe vor dem Probieren waschen und aushärten. Sie genauso behandeln wie später die Rohre: gleiche Stützen, Schichten und Aushärtung, so gestellt, wie deren Enden stehen werden, und vor dem Messen nur geschliffen, wenn auch die Rohre geschliffen werden. Enden von Hand einschieben, nie mit Gewalt.",
  "Once there is a run, its coupon stands here.":
    "Sobald es eine Leitung gibt, steht hier ihre Passprobe.",
  "and {0} more": "und {0} weitere",
  "and {0}": "und {0}",
  "of the coupon for {0}": "der Passprobe für {0}",
  "for {0}{1}": "für {0}{1}",
  "{0} sticks, {1} mm long. Each end is an end of your tube in another size: count its rings to know which. The bore steps along with the outside.":
    "{0} Stäbe, {1} mm lang. Jedes Ende ist ein Rohrende in einem anderen Maß: die Ringe zählen, um zu wissen, in welchem. Der Innendurchmesser geht mit dem Außendurchmesser mit.",
  "Coupon (.3mf)": "Passprobe (.3mf)",
  "One STL a stick (.zip)": "Eine STL je Stab (.zip)",
  "Put in what you measured": "Messwerte eintragen",
  "What you measured": "Messwerte",
  "{0} Remove these readings": "{0} Diese Messwerte entfernen",
  "In the file": "In der Datei",
  "Measured": "Gemessen",
  "Rings": "Ringe",
  "Add a reading: {0}": "Messwert hinzufügen: {0}",
  "{0}, reading {1}:": "{0}, Messwert {1}:",
  "Remove reading {0} of {1}": "Messwert {0} entfernen: {1}",
  "not read": "nicht gemessen",
  "One end fitted better than the stated size": "Ein Ende passte besser als das angegebene Maß",
  "{0} The stated size fitted best": "{0} Das angegebene Maß passte am besten",
  // form/fittings.js
  "for {0} {1} tube{2}": "für Rohr {0} {1}{2}",
  ", elbow": ", Winkel",
  "Add a fitting": "Verschraubung hinzufügen",
  "Measure yours": "Eigene messen",
  "Fittings": "Verschraubungen",
  "What is screwed into the ports. Measure your own: those shipped here are common sizes. {0}":
    "Was in die Anschlüsse geschraubt wird. Die eigenen messen: die mitgelieferten sind gängige Größen. {0}",
  "Elbow": "Winkel",
  "as the tube's": "wie das Rohr",
  "Body of the fitting": "Form der Verschraubung",
  "Straight": "Gerade",
  "O-ring that seals on the tube": "O-Ring, der auf dem Rohr dichtet",
  "I know its O-ring and gland": "O-Ring und Nut sind bekannt",
  // form/keep-outs.js
  "box": "Quader",
  "cylinder": "Zylinder",
  "Add a box": "Quader hinzufügen",
  "Add a cylinder": "Zylinder hinzufügen",
  "Keep clear of": "Sperrzonen",
  "Parts that the tubes must pass by with room to spare.":
    "Teile, an denen die Rohre mit Abstand vorbeimüssen.",
  // form/leak-test.js
  "Start a leak test with air": "Dichtheitsprüfung mit Luft beginnen",
  "First fill and leak test": "Erstbefüllung und Dichtheitsprüfung",
  "Before any coolant goes in: does the loop keep air?":
    "Bevor Kühlmittel hineinkommt: hält der Kreislauf die Luft?",
  "{0} Remove this test": "{0} Diese Prüfung entfernen",
  "not read yet": "noch nicht abgelesen",
  "the whole loop's": "des ganzen Kreislaufs",
  // form/loop.js
  "The loop": "Der Kreislauf",
  "What drives the coolant, the heat that it carries, and what else it passes beside the tubes.":
    "Was das Kühlmittel antreibt, welche Wärme es trägt und was es außer den Rohren durchfließt.",
  // form/look.js
  "As the preview draws it": "Wie die Vorschau es zeichnet",
  "Opaque": "Undurchsichtig",
  "Translucent": "Durchscheinend",
  "Clear": "Klar",
  // form/making.js
  "Making": "Herstellung",
  "What the tubes are printed in and on. The shipped figures are cautious ones of a class: put in those of the sheet that came with yours.":
    "Worin und worauf die Rohre gedruckt werden. Die mitgelieferten Werte sind vorsichtige Werte einer Klasse: besser die aus dem Datenblatt des eigenen Materials eintragen.",
  "How pieces of a cut tube are joined":
    "Wie die Teilstücke eines zerteilten Rohrs verbunden werden",
  "Bond strength as the adhesive's data sheet gives it for this plastic, warm and wet: halve it where the sheet says nothing. Gloves, fresh air, and the sheet's own cautions. Leave the leak test to run after it has cured.":
    "Klebefestigkeit nach dem Datenblatt des Klebstoffs für diesen Kunststoff, warm und nass; halbieren, wo das Blatt nichts dazu sagt. Handschuhe, frische Luft und die Warnhinweise des Blatts. Die Dichtheitsprüfung erst nach dem Aushärten machen.",
  "What strength is lessened by{0}": "Abminderung der Festigkeit{0}",
  // form/material.js
  "resin": "Harz",
  "powder": "Pulver",
  "filament": "Filament",
  "Not known": "Nicht bekannt",
  "Heat": "Wärme",
  "Strength": "Festigkeit",
  "Wall and cost": "Wand und Kosten",
  // form/notes.js
  "Limit from: {0}.": "Grenze nach: {0}.",
  "Apply this fix": "Diese Abhilfe anwenden",
  "of {0}": "von {0}",
  "take away the {0}": "{0} wegnehmen",
  "add the {0}": "{0} hinzufügen",
  "make the {0} {1}": "{0} auf {1} setzen",
  "make the {0}": "{0} setzen",
  // form/parts.js
  "Parts of the loop": "Bauteile des Kreislaufs",
  "None yet: without them the pump has only the tubes to drive.":
    "Noch keine: ohne sie treibt die Pumpe nur die Rohre.",
  "Add a part": "Bauteil hinzufügen",
  "Remove {0}": "{0} entfernen",
  "Part {0}": "Bauteil {0}",
  "part {0}": "Bauteil {0}",
  "Where the shipped figures come from": "Herkunft der mitgelieferten Werte",
  // form/pieces.js
  "Pieces:": "Teilstücke:",
  "A tube that does not fit the printer is cut, and its pieces are bonded: each slides into a socket on the next, a key lets it go in one way only, and rings count the joints.{0}":
    "Ein Rohr, das nicht in den Drucker passt, wird zerteilt und aus Teilstücken geklebt: jedes steckt in einer Muffe am nächsten, eine Nase lässt es nur in einer Lage hinein, und Ringe zählen die Klebestellen.{0}",
  "Find the fewest pieces": "Die wenigsten Teilstücke suchen",
  "Add a cut": "Schnitt hinzufügen",
  "to {0}": "an {0}",
  "printed whole": "ganz gedruckt",
  "cut into {0}": "in {0} zerteilt",
  "It is {0} mm long.": "Es ist {0} mm lang.",
  "Made in {0}; how each stands is shown under": "Gefertigt als {0}; wie jedes steht, zeigt",
  "On the plate": "Auf der Platte",
  "piece|pieces": "Teilstück|Teilstücke",
  "Remove cut {0}": "Schnitt {0} entfernen",
  "Cut {0} at": "Schnitt {0} bei",
  // form/ports.js
  "{0}, faces {1}": "{0}, zeigt nach {1}",
  "its own way": "eigener Richtung",
  "Add a port": "Anschluss hinzufügen",
  "Ports": "Anschlüsse",
  "The threaded holes that the tubes join, measured from one datum of your choice, z up. {0}":
    "Die Gewindelöcher, die von den Rohren verbunden werden, von einem frei gewählten Bezugspunkt aus gemessen, z nach oben. {0}",
  "Choose a fitting": "Verschraubung wählen",
  "Add a fitting above first": "Zuerst oben eine Verschraubung hinzufügen",
  // form/pump.js
  "{0} {1} at {2} {3}": "{0} {1} bei {2} {3}",
  "{0} by {1}": "{0} über {1}",
  "Add a point": "Punkt hinzufügen",
  "Remove point {0}": "Punkt {0} entfernen",
  "Point {0}:": "Punkt {0}:",
  // form/route.js
  "Route": "Verlauf",
  "To": "Nach",
  "a port": "einem Anschluss",
  "Add a corner": "Ecke hinzufügen",
  "Add a coil": "Wendel hinzufügen",
  // form/run-edits.js
  "Copy, turn round or mirror": "Kopieren, umdrehen oder spiegeln",
  "Copy": "Kopieren",
  "Turn round": "Umdrehen",
  "{0}: start at its other end": "{0}: am anderen Ende beginnen",
  "Mirror across a plane": "An einer Ebene spiegeln",
  "The mirrored run gets mirrored ports, or those that are there already.":
    "Die gespiegelte Leitung bekommt gespiegelte Anschlüsse, oder die, die es dort schon gibt.",
  "Across": "Quer zu",
  "Mirror": "Spiegeln",
  // form/running.js
  "water": "Wasser",
  "ethylene glycol": "Ethylenglykol",
  "propylene glycol": "Propylenglykol",
  "Running": "Betrieb",
  "What goes through the tubes, how warm and at what pressure.":
    "Was durch die Rohre fließt, wie warm und mit welchem Druck.",
  "Something else": "Etwas anderes",
  "from what it is made of": "nach seiner Zusammensetzung",
  // form/runs.js
  "Add a run": "Leitung hinzufügen",
  "Runs": "Leitungen",
  "One tube each. With nothing on its route a run takes the shortest way that its bend radius allows.":
    "Je ein Rohr. Steht nichts in ihrem Verlauf, nimmt eine Leitung den kürzesten Weg, den ihr Biegeradius zulässt.",
  "{0}, {1} mm long": "{0}, {1} mm lang",
  "Choose a port": "Anschluss wählen",
  "Add a port above first": "Zuerst oben einen Anschluss hinzufügen",
  "Tube{0}": "Rohr{0}",
  "Size": "Maß",
  "Own size": "Eigenes Maß",
  "wall {0} mm": "Wandstärke {0} mm",
  "Tube ends": "Rohrenden",
  // form/sections.js
  "This design": "Dieser Entwurf",
  "Lengths are typed in": "Längen eingeben in",
  "A field takes sums too, and a unit: 120/2 + 6.5, or 1 1/2 in.{0}":
    "Ein Feld nimmt auch Summen und eine Einheit: 120/2 + 6,5 oder 1 1/2 in.{0}",
  "millimetres": "Millimeter",
  "inches": "Zoll",
  "Results, drawings and files stay in millimetres, as print services expect.":
    "Ergebnisse, Zeichnungen und Dateien bleiben in Millimetern, wie Druckdienste es erwarten.",
  // form/service-price.js
  "Add a print service's prices": "Preise eines Druckdienstes hinzufügen",
  "{0} Remove these prices": "{0} Diese Preise entfernen",
  // form/station.js
  "What station {0} is": "Art der Station {0}",
  "Move {0} earlier": "{0} nach vorn",
  "Move {0} later": "{0} nach hinten",
  // form/stuff.js
  "{0} (own figures)": "{0} (eigene Werte)",
  "no name yet": "noch kein Name",
  "Make it my own": "Zu meinem eigenen machen",
  ": {0} with my figures": ": {0} mit eigenen Werten",
  "own {0}": "eigen: {0}",
  "Figures{0}": "Werte{0}",
  "from {0}": "aus {0}",
};
