// German for the preview.

/** @type {Record<string, string>} */
export const PREVIEW = {
  // preview/described.js
  "Preview of an empty design: squared paper and the axes x, y and z.":
    "Vorschau eines leeren Entwurfs: kariertes Papier und die Achsen x, y und z.",
  "tube|tubes": "Rohr|Rohre",
  "port|ports": "Anschluss|Anschlüsse",
  "keep-out|keep-outs": "Sperrzone|Sperrzonen",
  "Preview of {0}.": "Vorschau: {0}.",
  "Not made, shown as a dashed line: {0}.": "Nicht gemacht, als Strichlinie gezeigt: {0}.",
  "Selected: {0}.": "Ausgewählt: {0}.",
  "The tubes are cut open along the bore.": "Die Rohre sind der Länge nach aufgeschnitten.",
  "Squares of {0} mm.": "Kästchen von {0} mm.",
  "The tubes are clear and the coolant in them shows.": "Die Rohre sind klar, und das Kühlmittel darin ist zu sehen.",
  "The tubes are clear.": "Die Rohre sind klar.",
  "The tubes are translucent and the coolant in them shows.":
    "Die Rohre sind durchscheinend, und das Kühlmittel darin ist zu sehen.",
  "The tubes are translucent.": "Die Rohre sind durchscheinend.",
  "The coolant in the tubes is shown.": "Das Kühlmittel in den Rohren wird gezeigt.",
  // preview/drawing.js
  "Front: x across, z up": "Vorn: x quer, z nach oben",
  "Side: y across, z up": "Seite: y quer, z nach oben",
  "Top: x across, y up": "Oben: x quer, y nach oben",
  "Nothing to draw yet: state two ports and a run between them.":
    "Noch nichts zu zeichnen: zwei Anschlüsse und eine Leitung dazwischen angeben.",
  "{0} mm": "{0} mm",
  // preview/handle-words.js
  "{0} level with {1}": "{0} auf einer Höhe mit {1}",
  "straight {0} {1} before and {2} {3} after": "gerade {0} {1} davor und {2} {3} danach",
  "{0} {1} of {2}": "{0} {1} von {2}",
  "corner": "Ecke",
  "Bend radius at {0}": "Biegeradius an {0}",
  "move {0}": "{0} verschieben",
  "{0}: drag to move it.": "{0}: ziehen, um sie zu verschieben.",
  "{0}: drag to change it.": "{0}: ziehen, um ihn zu ändern.",
  "{0}: double-click to add a corner.": "{0}: Doppelklick fügt eine Ecke hinzu.",
  "{0}: click to select it, double-click to add a corner.":
    "{0}: Klick wählt sie aus, Doppelklick fügt eine Ecke hinzu.",
  "A corner can be added to a straight or a bend, not to a coil or a smooth curve.":
    "Eine Ecke lässt sich an einer Geraden oder einem Bogen hinzufügen, nicht an einer Wendel oder einer weichen Kurve.",
  "There is no run yet.": "Es gibt noch keine Leitung.",
  "{0} has no corners yet. Put one there.": "{0} hat noch keine Ecken. Eine setzen.",
  // preview/handles-part.js
  "Move handle left": "Griff nach links",
  "Move handle up": "Griff nach oben",
  "Move handle down": "Griff nach unten",
  "Move handle right": "Griff nach rechts",
  "Handles": "Griffe",
  "Handle": "Griff",
  "Handle before": "Voriger Griff",
  "Next handle": "Nächster Griff",
  "Move handle along": "Griff verschieben entlang",
  "along": "entlang",
  "Move handle by {0}": "Griff um {0} verschieben",
  "by {0}": "um {0}",
  "Corners": "Ecken",
  "Put a corner here": "Hier eine Ecke setzen",
  "Along": "Entlang",
  "plane": "Ebene",
  // preview/handles.js
  "Put back. {0}": "Zurückgesetzt. {0}",
  "add a corner to “{0}”": "Ecke an „{0}“ hinzufügen",
  "Corner {0} of {1} added.": "Ecke {0} von {1} hinzugefügt.",
  // preview/host.js
  "The solid preview cannot be drawn: {0}. The drawing stands in for it.":
    "Die plastische Vorschau lässt sich nicht zeichnen: {0}. Die Zeichnung vertritt sie.",
  "The graphics were lost and have not come back, so the drawing is shown.":
    "Die Grafik ging verloren und kam nicht wieder, darum wird die Zeichnung gezeigt.",
  "The solid preview stopped ({0}), so the drawing is shown.":
    "Die plastische Vorschau ist stehen geblieben ({0}), darum wird die Zeichnung gezeigt.",
  // preview/panel.js
  "Corner": "Ecke",
  "Front": "Vorn",
  "Back": "Hinten",
  "Left": "Links",
  "Right": "Rechts",
  "Top": "Oben",
  "Bottom": "Unten",
  "Turn left": "Nach links drehen",
  "Turn up": "Nach oben drehen",
  "Turn down": "Nach unten drehen",
  "Turn right": "Nach rechts drehen",
  "Move left": "Nach links schieben",
  "Move up": "Nach oben schieben",
  "Move down": "Nach unten schieben",
  "Move right": "Nach rechts schieben",
  "Kind of preview": "Art der Vorschau",
  "Solid": "Plastisch",
  "Drawing": "Zeichnung",
  "Arrow keys turn, with shift they move; plus and minus zoom; 0 fits. Enter goes to the next handle of the selected run, with shift to the one before; arrow keys with alt move it by {0}, with shift too by ten times as much; x, y or z held keeps it to that axis; escape lets go.":
    "Pfeiltasten drehen, mit Umschalttaste verschieben sie; Plus und Minus zoomen; 0 passt ein. Eingabetaste geht zum nächsten Griff der ausgewählten Leitung, mit Umschalttaste zum vorigen; Pfeiltasten mit Alt bewegen ihn um {0}, mit Umschalttaste um das Zehnfache; x, y oder z gehalten hält ihn auf dieser Achse; Escape lässt los.",
  "Squares of {0} mm": "Kästchen von {0} mm",
  "The last complete design. Fill in or mend what is marked.":
    "Der letzte vollständige Entwurf. Ausfüllen oder beheben, was markiert ist.",
  "Inside": "Innen",
  "Cut open": "Aufschneiden",
  "Show coolant": "Kühlmittel zeigen",
  "Picture (.png)": "Bild (.png)",
  "Look from": "Blick von",
  "Fit": "Einpassen",
  "Zoom": "Zoom",
  "Zoom out": "Herauszoomen",
  "Zoom in": "Hineinzoomen",
  "Turn": "Drehen",
  "Move": "Schieben",
  // preview/picture.js
  "No picture was made: the graphics are lost at the moment. Press again once the preview is back, or choose the drawing.":
    "Es wurde kein Bild gemacht: die Grafik ist gerade verloren. Noch einmal drücken, sobald die Vorschau wieder da ist, oder die Zeichnung wählen.",
  "No picture was made: {0}": "Es wurde kein Bild gemacht: {0}",
  "the browser has no room for it": "der Browser hat dafür keinen Platz",
  // preview/runs-key.js
  "Numbers in the preview": "Nummern in der Vorschau",
  "and {0} more in the order of the form": "und {0} weitere in der Reihenfolge des Formulars",
  // preview/snap.js
  "point": "Punkt",
  "coil": "Wendel",
};
