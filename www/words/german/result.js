// German for the results and the files.

/** @type {Record<string, string>} */
export const RESULT = {
  // result/asked.js
  "Closed": "Geschlossen",
  "One body": "Ein Körper",
  "Volume": "Volumen",
  "Unit": "Einheit",
  "Wall": "Wandstärke",
  "Wall for its size": "Wandstärke für die Größe",
  "Room in the printer": "Platz im Drucker",
  "Triangles": "Dreiecke",
  "File size": "Dateigröße",
  "What a print service asks": "Was ein Druckdienst verlangt",
  "Fill in or mend what is marked first.": "Zuerst ausfüllen oder beheben, was markiert ist.",
  "Writing the file and reading it back…": "Die Datei wird geschrieben und zurückgelesen…",
  "{0}, as STL with {1} triangles in {2}, within {3} mm of the exact tube.":
    "{0}, als STL mit {1} Dreiecken in {2}, auf {3} mm am genauen Rohr.",
  "Passes all that is asked": "Besteht alles, was verlangt wird",
  "{0} of {1} not passed": "{0} von {1} nicht bestanden",
  "passed": "bestanden",
  "not passed": "nicht bestanden",
  // result/bend-table.js
  "curve": "Kurve",
  "Rotate": "Drehung",
  "Bend": "Bogen",
  "Radius": "Radius",
  "Bend table of {0}": "Biegetabelle von {0}",
  "Straight before each bend; rotation about the way the tube is fed, {0} right-hand rule; bend is the angle turned through; radius is the centreline's, of a coil or a curve the tightest. Bending machines differ in the sign of the rotation.":
    "Gerade vor jedem Bogen; Drehung um die Vorschubrichtung des Rohrs, {0} Rechte-Hand-Regel; Bogen ist der Biegewinkel; Radius ist der der Mittellinie, bei Wendel oder Kurve der engste. Biegemaschinen unterscheiden sich im Vorzeichen der Drehung.",
  "end": "Ende",
  "against the": "gegen die",
  "by the": "nach der",
  "Fed from {0} first": "Vorschub zuerst von {0}",
  "Opposite sign of rotation": "Drehung mit umgekehrtem Vorzeichen",
  "the end": "dem Ende",
  // result/cost.js
  "What they cost, in your own money": "Was sie kosten, in eigener Währung",
  "before supports and waste: how the tubes stand when they are printed tells those, and the pack's sheet":
    "ohne Stützen und Abfall: die zeigt die Drucklage der Rohre, und das Begleitblatt im Paket",
  "the least order": "der Mindestauftrag",
  "{0} in one order, before finishing, tax and shipping":
    "{0} in einem Auftrag, ohne Nacharbeit, Steuer und Versand",
  "one piece": "ein Teilstück",
  "{0} pieces": "{0} Teilstücke",
  // result/drawing.js
  "Drawing to scale": "Zeichnung im Maßstab",
  "No drawing: {0}": "Keine Zeichnung: {0}",
  "Drawing…": "Wird gezeichnet…",
  "Drawing of {0}, scale {1}: three views, an isometric, dimensions and tables. The numbers stand in the bend table too.":
    "Zeichnung von {0}, Maßstab {1}: drei Ansichten, eine Isometrie, Maße und Tabellen. Die Zahlen stehen auch in der Biegetabelle.",
  "True size": "Wahre Größe",
  "Drawing of {0}": "Zeichnung von {0}",
  "{0} Print at 100 %, not fitted to the page, and measure the bar of 50 mm on it.":
    "{0} Mit 100 % drucken, nicht an die Seite angepasst, und den Balken von 50 mm darauf nachmessen.",
  "Print on {0}": "Auf {0} drucken",
  "A4 sheet|A4 sheets": "A4-Blatt|A4-Blätter",
  "Print on one {0} sheet": "Auf ein {0}-Blatt drucken",
  "It fits one A4 sheet.": "Sie passt auf ein A4-Blatt.",
  "The sheet is {0}; on A4 it takes {1} that overlap by 10 mm: lay the crosses on each other.":
    "Das Blatt ist {0}; auf A4 braucht es {1}, die um 10 mm überlappen: die Kreuze aufeinanderlegen.",
  "sheet|sheets": "Blatt|Blätter",
  "{0}: sheet {1} of {2} to {3}": "{0}: Blatt {1} von {2} bis {3}",
  // result/figure.js
  "to fill in": "auszufüllen",
  "({0} to {1})": "({0} bis {1})",
  // result/files.js
  "Bends (.csv)": "Bögen (.csv)",
  "Points (.csv)": "Punkte (.csv)",
  "Drawing (.svg)": "Zeichnung (.svg)",
  "Fine": "Fein",
  "0.01 mm: for a print service": "0,01 mm: für einen Druckdienst",
  "Normal": "Normal",
  "0.02 mm: smaller files": "0,02 mm: kleinere Dateien",
  "Coarse": "Grob",
  "0.05 mm: smallest, for a first try": "0,05 mm: am kleinsten, für einen ersten Versuch",
  "As it fits": "Wie es passt",
  "the finest file that the printer’s limits of a file take":
    "die feinste Datei, die die Dateigrenzen des Druckers zulassen",
  "How closely the files follow the exact shape": "Wie genau die Dateien der exakten Form folgen",
  "All files in one (.zip)": "Alle Dateien in einer (.zip)",
  "Save the design (.json)": "Entwurf sichern (.json)",
  "The pack has each tube as it stands on the plate, and a sheet that tells a print service what to print and you how to finish and fit it. All files in one has the tubes where they are in your own axes.":
    "Das Paket enthält jedes Rohr so, wie es auf der Platte steht, und ein Begleitblatt, das dem Druckdienst sagt, was zu drucken ist, und wie danach nachgearbeitet und eingepasst wird. „Alle Dateien in einer“ enthält die Rohre an ihrem Ort in den eigenen Achsen.",
  "Making the pack…": "Paket wird erzeugt…",
  "The pack: files, sheet, coupon (.zip)": "Das Paket: Dateien, Begleitblatt, Passprobe (.zip)",
  "Sheet, drawings and plots are in the page’s language; names in STL and 3MF and the heads of tables are in English, for programs.":
    "Begleitblatt, Zeichnungen und Diagramme sind in der Sprache der Seite; Namen in STL und 3MF und die Köpfe der Tabellen sind englisch, für Programme.",
  "Making the pack.": "Das Paket wird erzeugt.",
  "Before you print and fill": "Vor dem Drucken und Befüllen",
  "Correct STL and 3MF by my coupon": "STL und 3MF nach meiner Passprobe korrigieren",
  "For your printer; leave it off for a print service, which corrects for its own.":
    "Für den eigenen Drucker; für einen Druckdienst weglassen, der nach seinem eigenen korrigiert.",
  "No file: this run cannot be made as it is stated.{0}":
    "Keine Datei: diese Leitung ist so, wie sie angegeben ist, nicht machbar.{0}",
  "Do not print this yet: {0}": "Noch nicht drucken: {0}",
  "Pieces of {0}": "Teilstücke von {0}",
  "Printed in pieces: take these, or the pack. The STL above is the tube put together, the 3MF all its pieces in place.":
    "In Teilstücken gedruckt: diese nehmen oder das Paket. Die STL darüber ist das zusammengesetzte Rohr, die 3MF enthält alle Teilstücke an ihrem Ort.",
  "Piece {0} of {1}": "Teilstück {0} von {1}",
  "{0}, standing": "{0}, stehend",
  "as piece {0} of {1}": "als Teilstück {0} von {1}",
  "Plots of all runs and the loop": "Diagramme aller Leitungen und des Kreislaufs",
  "{0} (.svg)": "{0} (.svg)",
  ": plot": ": Diagramm",
  // result/findings.js
  "{0} Nothing found against these runs.": "{0} Kein Befund zu diesen Leitungen.",
  "And {0} more, marked in the form.": "Und {0} weitere, im Formular markiert.",
  "To fill in:": "Auszufüllen:",
  "field|fields": "Feld|Felder",
  "{0}, then the tubes follow.": "{0}, dann folgen die Rohre.",
  "{0} to mend": "{0} zu beheben",
  "stop|stops": "Stopp|Stopps",
  "{0} to take care of": "{0} zu beachten",
  "note|notes": "Hinweis|Hinweise",
  "No run yet": "Noch keine Leitung",
  "{0}, nothing found against it.": "{0}, kein Befund dazu.",
  "{0}, nothing found against them.": "{0}, kein Befund dazu.",
  "Go to {0}": "Gehe zu {0}",
  "the design": "der Entwurf",
  // result/fit.js
  "Nothing is measured yet.": "Noch nichts gemessen.",
  "Nothing is measured yet: the files have the stated sizes.":
    "Noch nichts gemessen: die Dateien haben die angegebenen Maße.",
  "Kept, but not used: the coupon is of another printer or material. The files have the stated sizes.":
    "Aufbewahrt, aber nicht verwendet: die Passprobe ist von einem anderen Drucker oder Material. Die Dateien haben die angegebenen Maße.",
  "Not used until the marked reading is put right. The files have the stated sizes.":
    "Nicht verwendet, bis der markierte Messwert berichtigt ist. Die Dateien haben die angegebenen Maße.",
  "From now on the files make up for this. Results, drawing and preview show the tube as it will be.":
    "Ab jetzt gleichen die Dateien das aus. Ergebnisse, Zeichnung und Vorschau zeigen das Rohr, wie es werden soll.",
  "Once every reading is a number or left empty, what they say stands here.":
    "Sobald jeder Messwert eine Zahl oder leer ist, steht hier, was sie sagen.",
  "What the coupon says": "Was die Passprobe sagt",
  "; seals are held to it": "; daran werden die Dichtungen gemessen",
  "three readings or more say it": "sagen erst drei oder mehr Messwerte",
  "of the corrected size, 19 times in 20{0}": "um das korrigierte Maß, 19 von 20 Mal{0}",
  "from 1 reading": "aus 1 Messwert",
  "mean of {0} readings": "Mittel aus {0} Messwerten",
  // result/glance.js
  "No run yet. Once two ports and a run between them are stated, its length, volumes and mass stand here.":
    "Noch keine Leitung. Sobald zwei Anschlüsse und eine Leitung dazwischen angegeben sind, stehen hier Länge, Volumen und Masse.",
  ": in service, bends and drawing": ": Betrieb, Bögen und Zeichnung",
  "Outside size {0} mm.": "Außenmaße {0} mm.",
  // result/graphs.js
  "Loss": "Verlust",
  "Margins": "Reserven",
  // result/inputs.js
  "station|stations": "Station|Stationen",
  // result/leak.js
  "Once every reading is filled in, what it says stands here.":
    "Sobald jeder Messwert ausgefüllt ist, steht hier, was sie sagen.",
  "What the leak test says": "Was die Dichtheitsprüfung sagt",
  "{0} {1} leaks in {2} minutes; {3} {4} may":
    "{0} {1} entweichen in {2} Minuten; {3} {4} dürfen es sein",
  "Pass:": "Bestanden:",
  "Fail:": "Nicht bestanden:",
  "{0}. Do not fill it yet.": "{0}. Noch nicht befüllen.",
  "; it warmed up, which hides a leak": "; es wurde wärmer, was ein Leck verdeckt",
  "in {0} minutes": "in {0} Minuten",
  "at most; {0} at least": "höchstens; mindestens {0}",
  // result/lines.js
  "What": "Was",
  "Is": "Ist",
  "May be, and what is left": "Darf sein, und was bleibt",
  "may be {0} {1}: {2}": "darf {0} {1} sein: {2}",
  "{0} {1} too much": "{0} {1} zu viel",
  "{0} left": "{0} Reserve",
  // result/loop.js
  "Once a run is made, what the pump drives through the loop stands here.":
    "Sobald eine Leitung gemacht ist, steht hier, was die Pumpe durch den Kreislauf treibt.",
  "The loop as a whole": "Der Kreislauf als Ganzes",
  "The pump drives no steady flow: {0}": "Die Pumpe treibt keinen stetigen Durchfluss: {0}",
  "{0} at {1} {2}": "{0} bei {1} {2}",
  "cannot be told without a flow": "ohne Durchfluss nicht zu sagen",
  "at the stated flow": "beim angegebenen Durchfluss",
  "at {0} °C; {1}, {2}": "bei {0} °C; {1}, {2}",
  "{0} none: the stated flow is beyond the pump's last point":
    "{0} keine: der angegebene Durchfluss liegt hinter dem letzten Punkt der Pumpe",
  "{0} the pump does not drive the stated flow;":
    "{0} die Pumpe schafft den angegebenen Durchfluss nicht;",
  "at the flow that the pump drives": "beim Durchfluss, den die Pumpe treibt",
  "What each takes, {0}": "Was jedes nimmt, {0}",
  "Tube or part": "Rohr oder Bauteil",
  "Only the tubes are counted, so that the pump seems to drive more than it will:":
    "Nur die Rohre sind gezählt, sodass die Pumpe mehr zu treiben scheint, als sie wird:",
  "add your blocks and radiators": "Kühlblöcke und Radiatoren hinzufügen",
  // result/missing.js
  "cannot be told: see what is found": "nicht zu sagen: siehe Befunde",
  "not known: needs {0}": "nicht bekannt: es fehlt {0}",
  "or": "oder",
  "the O-ring and gland of {0}": "O-Ring und Nut von {0}",
  // result/origin.js
  "Where does {0} come from?": "Woher kommt {0}?",
  "Where does it come from?": "Woher kommt das?",
  "Back to {0}": "Zurück zu {0}",
  "Formula": "Formel",
  "Source": "Quelle",
  "Holds": "Gilt",
  "Made of": "Besteht aus",
  ": where it comes from": ": woher es kommt",
  ": go to its field": ": zum Feld",
  // result/pieces.js
  "Printed in {0} pieces": "In {0} Teilstücken gedruckt",
  // result/plots.js
  "No run yet. Once there is one, its loss, margins and temperatures are drawn here.":
    "Noch keine Leitung. Sobald es eine gibt, werden hier Verlust, Reserven und Temperaturen gezeichnet.",
  "In words": "In Worten",
  "Save it (.svg)": "Sichern (.svg)",
  "Drawn of the design as it was before the last change.":
    "Gezeichnet vom Entwurf vor der letzten Änderung.",
  // result/runs-table.js
  "All runs and what each comes to": "Alle Leitungen und was sie ergeben",
  "Bends": "Bögen",
  "Found": "Befund",
  "cannot be made as it is stated": "so, wie sie angegeben ist, nicht machbar",
  "nothing": "nichts",
  // result/saving.js
  "the pack": "das Paket",
  "the archive of all files": "das Archiv aller Dateien",
  "the coupon": "die Passprobe",
  "Making {0}": "Erzeugt wird {0}",
  "the file": "die Datei",
  "No file was made: {0}": "Es wurde keine Datei erzeugt: {0}",
  "Give it up": "Abbrechen",
  // result/service.js
  "In service": "Im Betrieb",
  "from {0} to {1} °C": "von {0} bis {1} °C",
  "{0} at {1}": "{0} an {1}",
  "likely {0}, at worst {1}": "wahrscheinlich {0}, schlimmstenfalls {1}",
  "{0} to {1} at {2} {3}{4}": "{0} bis {1} bei {2} {3}{4}",
  "nowhere": "nirgends",
  "at {0}, up to {1} mm deep": "an {0}, bis {1} mm tief",
  "place|places": "Stelle|Stellen",
  // result/strip.js
  "bend|bends": "Bogen|Bögen",
  "coil|coils": "Wendel|Wendeln",
  "curve|curves": "Kurve|Kurven",
  "{0} laid out: {1} mm with {2}": "{0} ausgestreckt: {1} mm mit {2}",
  "no bend": "keinem Bogen",
};
