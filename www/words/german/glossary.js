// German for the glossary.

/** @type {Record<string, string>} */
export const GLOSSARY = {
  // glossary.js
  "What the words mean": "Was die Wörter bedeuten",
  "Where the tube goes": "Wo das Rohr langgeht",
  "Datum": "Bezugspunkt",
  "The corner that everything is measured from. Pick one that both rules and calipers reach, such as a corner of the case.":
    "Die Ecke, von der aus alles gemessen wird. Eine nehmen, an die Lineal und Messschieber herankommen, etwa eine Ecke des Gehäuses.",
  "A threaded hole in a part. It has a place, the middle of the hole on the face that the fitting seats on, and a facing, the way straight out of it.":
    "Ein Gewindeloch in einem Bauteil. Es hat einen Ort, die Mitte des Lochs auf der Fläche, auf der die Verschraubung aufsitzt, und eine Richtung, gerade heraus.",
  "What is screwed into the port and takes the tube, sealing it with a ring.":
    "Was in den Anschluss geschraubt wird und das Rohr aufnimmt; ein Ring dichtet.",
  "The fitting's widest ring round the tube. It needs room to be turned.":
    "Der breiteste Ring der Verschraubung ums Rohr. Er braucht Platz zum Drehen.",
  "Socket and stop": "Aufnahme und Anschlag",
  "The hole in the fitting that the tube slides into, and the shoulder at its bottom that the tube's end rests on.":
    "Das Loch der Verschraubung, in das das Rohr gleitet, und die Schulter an dessen Grund, auf der das Rohrende aufsitzt.",
  "Straight tube that has to follow the fitting before the first bend.":
    "Gerades Rohr, das vor dem ersten Bogen auf die Verschraubung folgen muss.",
  "One tube, from one port to another, with its corners, points and coils on the way.":
    "Ein Rohr von einem Anschluss zu einem anderen, mit seinen Ecken, Punkten und Wendeln unterwegs.",
  "Keep-out": "Sperrzone",
  "Room that no tube may enter: a part of the case, a card, a cable.":
    "Raum, in den kein Rohr darf: ein Teil des Gehäuses, eine Karte, ein Kabel.",
  "The tube": "Das Rohr",
  "Outer diameter and bore": "Außendurchmesser und Bohrung",
  "Across the outside, and across the hole. Half of what they differ by is the wall.":
    "Quer über außen, und quer über das Loch. Die Hälfte ihres Unterschieds ist die Wand.",
  "Centreline": "Mittellinie",
  "The line down the middle of the tube. Lengths and bend radii are told along it.":
    "Die Linie durch die Mitte des Rohrs. Längen und Biegeradien gelten an ihr.",
  "Of the circle that the centreline goes round in a bend. More of it loses less pressure.":
    "Der des Kreises, dem die Mittellinie in einem Bogen folgt. Ein größerer kostet weniger Druck.",
  "Chamfer": "Fase",
  "The cone at the tube's end that leads it through the ring without cutting it.":
    "Der Kegel am Rohrende, der es durch den Ring führt, ohne ihn zu schneiden.",
  "Length that an end is printed longer by, to be sanded off until it fits.":
    "Länge, um die ein Ende länger gedruckt wird, zum Abschleifen, bis es passt.",
  "Deviation": "Abweichung",
  "How far the file's flat faces may lie from the round skin, at most.":
    "Wie weit die flachen Flächen der Datei höchstens neben der runden Haut liegen dürfen.",
  "Gland and squeeze": "Nut und Verpressung",
  "The groove that the sealing ring lies in, and the share of its thickness that the tube presses it together by.":
    "Die Rille, in der der Dichtring liegt, und der Anteil seiner Dicke, um den das Rohr ihn zusammendrückt.",
  "Heat deflection": "Wärmeformbeständigkeit",
  "The temperature at which a loaded bar of the material bends by a set amount. Above it a tube slowly gives.":
    "Die Temperatur, bei der sich ein belasteter Stab des Materials um ein festes Maß durchbiegt. Darüber gibt ein Rohr langsam nach.",
  "What pushing the coolant through takes, at a stated flow.":
    "Was es kostet, das Kühlmittel hindurchzuschieben, bei einem angegebenen Durchfluss.",
  "The height of water that a pump can hold up: the pressure it gives, in metres.":
    "Die Höhe einer Wassersäule, die eine Pumpe hält: ihr Druck, in Metern.",
  "Tells whether the coolant flows in quiet layers (below some 2300) or whirls.":
    "Sagt, ob das Kühlmittel in ruhigen Schichten fließt (unter etwa 2300) oder wirbelt.",
  "Printing": "Druck",
  "Stance": "Lage",
  "How a piece stands on the build plate while it is printed.": "Wie ein Teilstück beim Druck auf der Bauplatte steht.",
  "Cup": "Mulde",
  "A place where the bore holds liquid resin against the vat while it is printed, which pulls at the wall.":
    "Eine Stelle, an der die Bohrung beim Druck flüssiges Harz gegen die Wanne hält, was an der Wand zieht.",
  "Piece and joint": "Teilstück und Verbindung",
  "What is printed in one go where a tube is too long for the printer, and the glued place where two pieces meet.":
    "Was in einem Zug gedruckt wird, wo ein Rohr für den Drucker zu lang ist, und die Klebestelle zwischen zweien.",
  "A small print with ends in several sizes. It shows which size really fits, before a whole tube is printed.":
    "Ein kleiner Druck mit Enden in mehreren Größen. Er zeigt, welche Größe wirklich passt, bevor ein ganzes Rohr gedruckt wird.",
  "Pack": "Gesamtpaket",
  "One download with everything: files, coupon, drawings, and a sheet to order and assemble by.":
    "Ein Download mit allem: Dateien, Passprobe, Zeichnungen und ein Blatt zum Bestellen und Zusammenbauen.",
  "Lead": "Gerader Auslauf",
  "Bend radius": "Biegeradius",
  "Trim": "Zugabe",
  "Pressure loss": "Druckverlust",
  "Head": "Förderhöhe",
  "Reynolds number": "Reynolds-Zahl",
};
