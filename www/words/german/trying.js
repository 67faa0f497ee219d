// German for other sizes and materials, and how tubes stand on the plate.

/** @type {Record<string, string>} */
export const TRYING = {
  // plate/against.js
  "layer|layers": "Schicht|Schichten",
  ", about {0}": ", etwa {0}",
  "{0} mm high, {1} × {2} mm on the plate{3}": "{0} mm hoch, {1} × {2} mm auf der Platte{3}",
  "fits, with {0} mm to spare between the margins": "passt, mit {0} mm Luft zwischen den Rändern",
  "sticks out of the room by {0} mm": "ragt um {0} mm aus dem Bauraum",
  "neither end stands flat on the plate, so it needs a foot to stand on":
    "kein Ende steht flach auf der Platte, darum braucht es einen Fuß",
  "keeps up to {0} of resin when it comes out of the vat: turn it over to drain it":
    "behält bis zu {0} Harz, wenn es aus der Wanne kommt: zum Ablaufen umdrehen",
  "traps no resin": "hält kein Harz zurück",
  "traps {0} of resin in {1}": "hält {0} Harz in {1} zurück",
  "cup|cups": "Mulde|Mulden",
  "no ceiling of the bore wider than the {0} mm that it bridges": "keine Decke der Bohrung breiter als die {0} mm, die er überbrückt",
  "the ceiling of {0} mm of bore is wider than the {1} mm that it bridges; {2} mm at its widest":
    "die Decke von {0} mm Bohrung ist breiter als die {1} mm, die er überbrückt; {2} mm an der breitesten Stelle",
  "no bore flatter than {0}°": "keine Bohrung flacher als {0}°",
  ", from {0} to {1} mm along the tube": ", von {0} bis {1} mm entlang des Rohrs",
  ", in {0} places": ", an {0} Stellen",
  "{0} mm of bore flatter than {1}°{2}; {3}° at its flattest":
    "{0} mm Bohrung flacher als {1}°{2}; {3}° an der flachsten Stelle",
  "{0} mm at its start": "{0} mm am Anfang",
  "{0} mm at its end": "{0} mm am Ende",
  "and": "und",
  "sealing bands need support: {0}": "Dichtflächen brauchen Stützen: {0}",
  "sealing bands stay clear of support": "Dichtflächen bleiben frei von Stützen",
  ": {0} cm³ of supports, roughly": ": {0} cm³ Stützen, grob",
  "to": "bis",
  "about {0} cm² of its outside needs support, beside what it stands on{1}":
    "etwa {0} cm² der Außenfläche brauchen Stützen, neben dem, worauf es steht{1}",
  "no support but what it stands on": "keine Stützen außer dem, worauf es steht",
  // plate/panel.js
  "No run yet. Once there is one, this shows how it stands when it is printed.":
    "Noch keine Leitung. Sobald es eine gibt, zeigt dies, wie sie beim Drucken steht.",
  "How each tube stands when it is printed": "Wie jedes Rohr beim Drucken steht",
  "What counts, about in this order: that it fits, that no resin is trapped, that no bore lies too flat, that the sealing bands stay clear of supports, then supports and height. The plate is drawn below; a resin printer holds it upside down.":
    "Was zählt, etwa in dieser Reihenfolge: dass es passt, dass kein Harz zurückbleibt, dass keine Bohrung zu flach liegt, dass die Dichtflächen frei von Stützen bleiben, dann Stützen und Höhe. Die Platte ist unten gezeichnet; ein Harzdrucker hält sie kopfüber.",
  "Cut it so": "So zerteilen",
  "Mend it so": "So beheben",
  "{0}, standing as drawn": "{0}, stehend wie gezeichnet",
  "Leave it to the best found": "Der besten gefundenen überlassen",
  "The print service asks {0} for it in your money, however it stands; its least order is for all tubes together.":
    "Der Druckdienst verlangt dafür {0} in eigener Währung, gleich wie es steht; sein Mindestauftrag gilt für alle Rohre zusammen.",
  "Piece": "Teilstück",
  "Show": "Zeigen",
  "as it stands now": "steht jetzt so",
  "Stand it so": "So stellen",
  "Material": "Material",
  "in your money, up to supports and": "in eigener Währung, bis auf Stützen und",
  "waste {0}": "Abfall {0}",
  "the cost in this stance": "die Kosten in dieser Lage",
  "Being looked for…": "Wird gesucht…",
  "No run can be made as it is; see what is found.":
    "Keine Leitung ist so machbar; siehe Befunde.",
  "Being looked for anew…": "Wird neu gesucht…",
  "This is as it was before; what is marked has to be mended first.":
    "Dies ist der Stand von vorher; zuerst beheben, was markiert ist.",
  "{0} to stand, the best first.": "{0}, die beste zuerst.",
  "way|ways": "mögliche Lage|mögliche Lagen",
  // plate/picture.js
  "From the side": "Von der Seite",
  "From above": "Von oben",
  "{0} on the plate, {1}: {2}; {3}.": "{0} auf der Platte, {1}: {2}; {3}.",
  "{0}, in a room of {1} mm; the dashes are its margins. {2} {3}":
    "{0}, in einem Bauraum von {1} mm; gestrichelt seine Ränder. {2} {3}",
  "bore too flat": "Bohrung zu flach",
  "traps resin": "hält Harz zurück",
  // plate/plate.js
  "Best found": "Beste gefundene",
  "Way {0}": "Lage {0}",
  "Your own": "Eigene",
  "{0}, piece {1},": "{0}, Teilstück {1},",
  "{0} stands as “{1}” from now on.": "{0} steht ab jetzt wie „{1}“.",
  "{0} stands as is found best from now on.": "{0} steht ab jetzt in der besten gefundenen Lage.",
  "Undo: as it stood before": "Rückgängig: wie es zuvor stand",
  // plate/plates.js
  "All pieces on as few plates as they take": "Alle Teilstücke auf so wenigen Platten wie möglich",
  "Every piece stands as it is chosen above, turned by a right angle where more fit so; where fewer plates do, each is turned until the rectangle round it is least.{0} What is found is good, not proven the fewest.":
    "Jedes Teilstück steht wie oben gewählt, um einen rechten Winkel gedreht, wo so mehr Platz haben; wo weniger Platten reichen, ist jedes gedreht, bis das Rechteck darum am kleinsten ist.{0} Was gefunden wird, ist gut, aber nicht bewiesen das wenigste.",
  "Boxes are {0} mm apart or more (common practice, no source).":
    "Kästen liegen mindestens {0} mm auseinander (allgemein üblich, ohne Quelle).",
  "On no plate: {0}{1}.": "Auf keiner Platte: {0}{1}.",
  ", piece {0}": ", Teilstück {0}",
  "Plate {0}": "Platte {0}",
  "From above; the dashes are the margins.": "Von oben; gestrichelt die Ränder.",
  "3MF of plate {0}": "3MF der Platte {0}",
  ": {0} mm{1}": ": {0} mm{1}",
  ", turned by {0}°": ", um {0}° gedreht",
  "{0}, {1} mm high{2}": "{0}, {1} mm hoch{2}",
  "{0}, piece {1} of {2}": "{0}, Teilstück {1} von {2}",
  "Being laid out…": "Wird verteilt…",
  "Being laid out anew…": "Wird neu verteilt…",
  "{0} on none.": "{0} auf keiner.",
  "other|others": "weiteres|weitere",
  "Nothing fits on a plate.": "Nichts passt auf eine Platte.",
  "{0} on {1}.{2}": "{0} auf {1}.{2}",
  "plate|plates": "Platte|Platten",
  // what-if/chart.js
  "can be made": "machbar",
  "can be made, with care": "machbar, mit Vorsicht",
  "stopped": "gestoppt",
  "No variant has both of these figures, so there is nothing to draw.":
    "Keine Variante hat beide Werte, darum gibt es nichts zu zeichnen.",
  "Not drawn: {0} without both figures.": "Nicht gezeichnet: {0} ohne beide Werte.",
  "variant|variants": "Variante|Varianten",
  "Chart: upwards": "Diagramm: nach oben",
  "{0} over {1}: {2}. Arrow keys go from one to the next; Enter goes to its row.":
    "{0} über {1}: {2}. Pfeiltasten gehen von einer zur nächsten; Eingabetaste geht zu ihrer Zeile.",
  "as it is now": "wie es jetzt ist",
  "Point at a mark or tab to it to read it; press it to find its row.":
    "Auf eine Marke zeigen oder mit Tab ansteuern, um sie zu lesen; drücken, um ihre Zeile zu finden.",
  "Least {0} of those that can be made: {1}, {2}{3}.":
    "Kleinster Wert der machbaren, {0}: {1}, {2}{3}.",
  "None of these can be made.": "Keine davon ist machbar.",
  ", as it is now": ", wie es jetzt ist",
  // what-if/columns.js
  "Tube": "Rohr",
  "each its own": "je nach Leitung",
  "each": "je",
  "{0} nothing": "{0} nichts",
  // what-if/panel.js
  "No run yet. Once there is one, other sizes and materials can be tried on it here.":
    "Noch keine Leitung. Sobald es eine gibt, lassen sich hier andere Maße und Materialien an ihr ausprobieren.",
  "Try other sizes and materials, side by side":
    "Andere Maße und Materialien nebeneinander ausprobieren",
  "Your design stays as it is until you take a variant over; then one press undoes it. Ways and bend radii stay as they are.":
    "Der Entwurf bleibt, wie er ist, bis eine Variante übernommen wird; danach macht ein Druck das rückgängig. Verlauf und Biegeradien bleiben, wie sie sind.",
  "Start over from the design": "Vom Entwurf neu beginnen",
  "all {0} runs": "alle {0} Leitungen",
  "only {0}": "nur {0}",
  "{0}s": "{0}",
  "as it is": "wie es ist",
  "One size or several with commas between them, such as 12, 14.5, 16. Empty leaves each run as it is.":
    "Ein Maß oder mehrere, durch Semikolon getrennt, etwa 12; 14,5; 16. Leer lässt jede Leitung, wie sie ist.",
  "{0}s in trade use": "{0} im Handel",
  "In trade use:": "Im Handel:",
  "none ticked: as it is{0}": "nichts angekreuzt: wie es ist{0}",
  "Being worked out…": "Wird berechnet…",
  "{0}{1}: {2} can be made{3}.": "{0}{1}: {2} machbar{3}.",
  ", of {0} together": ", {0} zusammen",
  ", {0} stopped": ", {0} gestoppt",
  "{0} Being worked out anew…": "{0} Wird neu berechnet…",
  "{0} This is as it was before; what is marked has to be mended first.":
    "{0} Dies ist der Stand von vorher; zuerst beheben, was markiert ist.",
  // what-if/sizes.js
  "“{0}” is not a size. Give numbers with commas between them, such as 12, 14.5, 16.":
    "„{0}“ ist kein Maß. Zahlen durch Semikolon getrennt angeben, etwa 12; 14,5; 16.",
  "A size is above 0, and “{0}” is not.": "Ein Maß ist größer als 0, „{0}“ ist es nicht.",
  "“{0}” could be {1}.{2}, or {3} and {4}. Give {5}.{6} with a point, or a space after the comma.":
    "„{0}“ könnte {1},{2} heißen, oder {3} und {4}. {5},{6} mit Semikolon dahinter angeben oder ein Leerzeichen nach dem Komma.",
  // what-if/table.js
  "Can be made": "Machbar",
  "Can be made, with care": "Machbar, mit Vorsicht",
  "Stopped": "Gestoppt",
  "All variants and what each comes to": "Alle Varianten und was jede ergibt",
  "Take over": "Übernehmen",
  "Stopped:": "Gestoppt:",
  "And {0}": "Und {0}",
  "more reason|more reasons": "weiterer Grund|weitere Gründe",
  "{0}, told in full once it is taken over.": "{0}, vollständig genannt nach dem Übernehmen.",
  "further one|further ones": "weiterer|weitere",
  // what-if/what-if.js
  "{0} was not taken over: the table is still of what was there before. {1}":
    "{0} wurde nicht übernommen: die Tabelle zeigt noch den Stand von vorher. {1}",
  "Press again once it is worked out anew.": "Noch einmal drücken, sobald neu berechnet ist.",
  "Mend first what is marked.": "Zuerst beheben, was markiert ist.",
  "for {0}": "für {0}",
  "Taken over{0}: {1}.": "Übernommen{0}: {1}.",
  "The variant was not taken over: {0}": "Die Variante wurde nicht übernommen: {0}",
};
