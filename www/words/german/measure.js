// German for how to measure.

/** @type {Record<string, string>} */
export const MEASURE = {
  // measure/dialog.js
  "How to measure": "So wird gemessen",
  "Calipers, a rule and a torch are enough. Mains off and unplugged, coolant drained, before your hands are in the case; edges of sheet metal cut.":
    "Messschieber, Lineal und Taschenlampe genügen. Netzstecker gezogen und Kühlmittel abgelassen, bevor die Hände ins Gehäuse kommen; Blechkanten schneiden.",
  "Measure twice, at different times: what differs between the two is what you state under “Measured to”.":
    "Zweimal messen, zu verschiedenen Zeiten: der Unterschied gehört in das Feld „Gemessen auf“.",
  "Print a measuring sheet": "Messblatt drucken",
  // measure/pictures.js
  "x": "x",
  "z": "z",
  "y": "y",
  "datum: one corner": "Bezugspunkt: eine Ecke",
  "x = (a + b) / 2": "x = (a + b) / 2",
  "faces +z": "zeigt nach +z",
  "faces −x": "zeigt nach −x",
  "out of the hole, as the tube leaves": "aus dem Loch heraus, wie das Rohr",
  "collar": "Bund",
  "tube": "Rohr",
  "the part: its seat face": "das Bauteil: seine Sitzfläche",
  "height": "Höhe",
  "socket": "Tiefe",
  "half the gland": "halber Nutgrund",
  "section": "Schnur",
  "the tube's middle": "die Rohrmitte",
  "width": "Breite",
  "One datum for everything": "Ein Bezugspunkt für alles",
  "Choose one corner of the case that you can reach with the calipers, and count every length from it: x to the right, y away from you, z up. A metal edge is better than a plastic panel, which bends.":
    "Eine Ecke des Gehäuses wählen, die der Messschieber erreicht, und alle Längen von ihr aus zählen: x nach rechts, y nach hinten, z nach oben. Eine Metallkante ist besser als eine Kunststoffblende, die sich biegt.",
  "The centre of a port, from two edges": "Die Mitte eines Anschlusses, von zwei Kanten aus",
  "Nobody can measure to the middle of a hole. Measure from the wall to its near edge, a, and to its far edge, b: the centre is halfway. Type it as it is: (31.2 + 49) / 2. Do the same for the other two directions. The height counts at the face that the fitting seats on.":
    "Die Mitte eines Lochs kann niemand messen. Von der Wand bis zur nahen Kante messen, a, und bis zur fernen, b: die Mitte liegt dazwischen. Einfach so eintippen: (31,2 + 49) / 2. Ebenso in den anderen beiden Richtungen. Die Höhe zählt an der Fläche, auf der die Verschraubung sitzt.",
  "Which way it faces": "Wohin er zeigt",
  "The direction out of the threaded hole, as the tube will leave it. Most ports face along an axis; a tilted one takes three numbers, how far it goes along x, y and z.":
    "Die Richtung aus dem Gewindeloch heraus, in der das Rohr weggeht. Die meisten Anschlüsse zeigen entlang einer Achse; ein schräger braucht drei Zahlen: wie weit es entlang x, y und z geht.",
  "The fitting": "Die Verschraubung",
  "Screw one in by hand. Height: from the seat to the mouth where the tube goes in. Socket: from the mouth down to the shoulder that the tube butts against; a depth rod in the bore tells it. Collar: the widest ring, which your fingers must be able to turn. Tube: the outer diameter that it is made for, as its data sheet says.":
    "Eine von Hand einschrauben. Höhe: vom Sitz bis zur Mündung, in die das Rohr geht. Einstecktiefe: von der Mündung hinab bis zum Anschlag, an den das Rohr stößt; das Tiefenmaß in der Bohrung zeigt sie. Bund: der breiteste Ring, den die Finger drehen können müssen. Rohr: der Außendurchmesser, für den sie gemacht ist, laut Datenblatt.",
  "Its O-ring and gland": "Ihr O-Ring und seine Nut",
  "Take the ring out with a wooden pick. Section: how thick the ring itself is, measured without pressing it. Gland: the inner diameter at the floor of the groove that it sits in; width: of that groove. Not sure? Leave them out; then the seal is not judged, and the coupon will tell.":
    "Den Ring mit einem Holzstäbchen herausnehmen. Schnurstärke: wie dick der Ring selbst ist, ohne Druck gemessen. Nut: der Innendurchmesser am Grund der Nut, in der er sitzt; Breite: die der Nut. Nicht sicher? Weglassen; dann wird die Dichtung nicht beurteilt, und die Passprobe gibt Auskunft.",
  // measure/sheet.js
  "x near": "x nah",
  "x far": "x fern",
  "y near": "y nah",
  "y far": "y fern",
  "z near": "z nah",
  "z far": "z fern",
  "Faces": "Richtung",
  "Fitting": "Verschraubung",
  "For tube": "Für Rohr",
  "Height": "Höhe",
  "Socket": "Einstecktiefe",
  "Collar": "Bund",
  "Ring section": "Schnurstärke",
  "Gland": "Nut",
  "Gland width": "Nutbreite",
  "pump out": "Pumpe aus",
  "straight 12": "gerade 12",
  "Measuring sheet": "Messblatt",
  "All in millimetres, from one datum: ______________________________ (the corner you count from). x to the right, y away from you, z up. Mains off, unplugged, drained.":
    "Alles in Millimetern, von einem Bezugspunkt aus: ______________________________ (die Ecke, ab der gezählt wird). x nach rechts, y nach hinten, z nach oben. Netzstecker gezogen, Kühlmittel abgelassen.",
  "The lines in slanted type are worked examples. Near and far: from the wall to both edges of the hole, and between them the centre, (31.2 + 49.0) / 2 = 40.1. Along the way that a port faces there is one number, to its seat face. ±: by how much two measurements differ.":
    "Die schräg gesetzten Zeilen sind durchgerechnete Beispiele. Nah und fern: von der Wand bis zu beiden Kanten des Lochs, dazwischen die Mitte, (31,2 + 49,0) / 2 = 40,1. In der Richtung, in die ein Anschluss zeigt, gibt es nur eine Zahl: bis zu seiner Sitzfläche. ±: um wie viel sich zwei Messungen unterscheiden.",
};
