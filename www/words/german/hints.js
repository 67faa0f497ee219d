// German for what is said of each quantity.

/** @type {Record<string, string>} */
export const HINTS = {
  // hints
  "A title for the whole design; it names the files.":
    "Ein Titel für den ganzen Entwurf; danach heißen die Dateien.",
  "Anything worth keeping with the design: the part names, how you measured, what you ordered.":
    "Alles, was beim Entwurf bleiben soll: die Namen der Bauteile, wie gemessen wurde, was bestellt ist.",
  "A short name for this kind of fitting; ports refer to it.":
    "Ein kurzer Name für diese Art Verschraubung; die Anschlüsse beziehen sich darauf.",
  "The outer diameter of the tube that this fitting is made for.":
    "Der Außendurchmesser des Rohrs, für das diese Verschraubung gemacht ist.",
  "From the face of the part to the rim where the tube goes in, with the fitting screwed down.":
    "Von der Fläche des Bauteils bis zum Rand, in den das Rohr geht, bei festgeschraubter Verschraubung.",
  "Push a tube in until it stops, mark it at the rim, and measure from the mark to its end.":
    "Ein Rohr bis zum Anschlag einschieben, am Rand anzeichnen und vom Strich bis zum Ende messen.",
  "Across the widest ring of the fitting: the room it needs to be turned. Left out, it is 7 mm over the tube.":
    "Über den breitesten Ring der Verschraubung: der Platz, den sie zum Drehen braucht. Weggelassen sind es 7 mm mehr als das Rohr.",
  "Straight tube that must follow the rim before the first bend; 5 mm or half the tube's diameter is usual.":
    "Gerades Rohr, das nach dem Rand vor dem ersten Bogen kommen muss; 5 mm oder der halbe Rohrdurchmesser sind üblich.",
  "How far the fitting turns the tube away from the port's own direction.":
    "Wie weit die Verschraubung das Rohr von der Richtung des Anschlusses wegdreht.",
  "From the face of the part straight out to the middle of the turned arm.":
    "Von der Fläche des Bauteils gerade heraus bis zur Mitte des abgewinkelten Arms.",
  "From the middle of the port along the turned arm to the rim where the tube goes in.":
    "Von der Mitte des Anschlusses entlang des abgewinkelten Arms bis zum Rand, in den das Rohr geht.",
  "Which way the arm points: 0 is towards up (z), or along x where the port itself faces up or down; it grows anticlockwise, seen looking at the part.":
    "Wohin der Arm zeigt: 0 ist nach oben (z), oder entlang x, wo der Anschluss selbst nach oben oder unten zeigt; zunehmend gegen den Uhrzeigersinn, mit Blick auf das Bauteil.",
  "The narrowest bore inside the fitting; leave it empty where it is as wide as the tube's.":
    "Die engste Bohrung in der Verschraubung; leer lassen, wo sie so weit ist wie die des Rohrs.",
  "Thickness of the ring that seals on the tube: 1.78, 2.0 or 2.62 are usual.":
    "Dicke des Rings, der auf dem Rohr dichtet: 1,78, 2,0 oder 2,62 sind üblich.",
  "Diameter of the floor of the groove that the ring lies in, measured without the ring.":
    "Durchmesser am Grund der Nut, in der der Ring liegt, ohne Ring gemessen.",
  "Width of the groove along the tube; leave it empty where you did not measure it. 2.7 is usual for a 2.0 ring.":
    "Breite der Nut entlang des Rohrs; leer lassen, wo sie nicht gemessen ist. 2,7 ist üblich für einen Ring von 2,0.",
  "What you call the hole: part and use, such as \"pump out\".":
    "Wie das Loch heißen soll: Bauteil und Zweck, etwa „Pumpe aus“.",
  "The middle of the threaded hole, on the face that the fitting seats on, from your datum.":
    "Die Mitte des Gewindelochs, auf der Fläche, auf der die Verschraubung sitzt, vom Bezugspunkt aus.",
  "The direction straight out of the hole; any length will do, 0, 0, 1 is up.":
    "Die Richtung gerade aus dem Loch heraus; jede Länge ist recht, 0, 0, 1 ist nach oben.",
  "What is screwed into this port.": "Was in diesen Anschluss geschraubt ist.",
  "How far off the position may be: about 0.5 with calipers, 1 with a tape, less off a drawing.":
    "Um wie viel die Lage falsch sein kann: etwa 0,5 mit dem Messschieber, 1 mit dem Maßband, weniger aus einer Zeichnung.",
  "What you call this tube; it names the file you print.":
    "Wie dieses Rohr heißen soll; danach heißt die Datei zum Drucken.",
  "The port that the tube starts at.": "Der Anschluss, an dem das Rohr beginnt.",
  "The port that the tube ends at.": "Der Anschluss, an dem das Rohr endet.",
  "The tube's outside, as your fittings want it; 12, 14 and 16 are usual.":
    "Das Außenmaß des Rohrs, wie die Verschraubungen es brauchen; 12, 14 und 16 sind üblich.",
  "The tube's inside; 4 mm less than the outside leaves a 2 mm wall, which is usual for printed tube.":
    "Das Innenmaß des Rohrs; 4 mm weniger als außen lassen 2 mm Wand, was für gedruckte Rohre üblich ist.",
  "Radius of the tube's middle line in its bends; twice the outer diameter is usual, and what is used if you leave it out.":
    "Radius der Rohrmittellinie in ihren Bögen; der doppelte Außendurchmesser ist üblich und gilt, wenn nichts angegeben ist.",
  "Where bends are closer than their straights, they share the room instead of being refused; the radii are upper limits then.":
    "Wo Bögen enger beieinander liegen als ihre Geraden, teilen sie sich den Platz, statt abgelehnt zu werden; die Radien sind dann Obergrenzen.",
  "A body may be thicker than the tube, taper, or carry lobes that run or twist along it; left out, the tube is plain.":
    "Ein Körper kann dicker sein als das Rohr, sich verjüngen oder Rippen tragen, die an ihm entlang laufen oder sich winden; weggelassen ist das Rohr glatt.",
  "Outer diameter of the body where it begins, after the first fitting's lead; left out, the tube's.":
    "Außendurchmesser des Körpers, wo er beginnt, nach dem Auslauf der ersten Verschraubung; weggelassen der des Rohrs.",
  "Outer diameter of the body where it ends; left out, the same all along.":
    "Außendurchmesser des Körpers, wo er endet; weggelassen überall gleich.",
  "Length over which the round tube becomes the body, at each end.":
    "Länge, auf der das runde Rohr in den Körper übergeht, an jedem Ende.",
  "How many ridges run along the body: 0 for a round one, or 2 to 24.":
    "Wie viele Rippen am Körper entlang laufen: 0 für einen runden, sonst 2 bis 24.",
  "How deep the grooves between the lobes go; the wall under them must still do.":
    "Wie tief die Rillen zwischen den Rippen gehen; die Wand darunter muss noch genügen.",
  "How far the lobes turn about the tube for each millimetre along it; 0 runs straight.":
    "Wie weit sich die Rippen je Millimeter Länge um das Rohr drehen; 0 läuft gerade.",
  "How the tube stands on the printer's plate; left out, the best that is found.":
    "Wie das Rohr auf der Druckplatte steht; weggelassen die beste Lage, die gefunden wird.",
  "The direction in your axes that points away from the plate when the tube is printed.":
    "Die Richtung in den eigenen Achsen, die beim Drucken des Rohrs von der Platte weg zeigt.",
  "How far the tube is turned on the plate, seen from above against the clock.":
    "Wie weit das Rohr auf der Platte gedreht ist, von oben gesehen gegen den Uhrzeigersinn.",
  "How far along the tube from its first end face the two pieces meet inside; the joint reaches back from there.":
    "Wie weit entlang des Rohrs, von seiner ersten Stirnfläche aus, sich die beiden Teilstücke innen treffen; die Verbindung reicht von dort zurück.",
  "How the piece that begins at this cut stands on the printer's plate; left out, the best that is found.":
    "Wie das Teilstück, das an diesem Schnitt beginnt, auf der Druckplatte steht; weggelassen die beste Lage, die gefunden wird.",
  "The direction in your axes that points away from the plate when this piece is printed.":
    "Die Richtung in den eigenen Achsen, die beim Drucken dieses Teilstücks von der Platte weg zeigt.",
  "How far the piece is turned on the plate, seen from above against the clock.":
    "Wie weit das Teilstück auf der Platte gedreht ist, von oben gesehen gegen den Uhrzeigersinn.",
  "Angle between the chamfer and the tube's axis; 15 to 20 lets the end slide past the O-ring.":
    "Winkel zwischen Fase und Rohrachse; 15 bis 20 lassen das Ende am O-Ring vorbeigleiten.",
  "How far along the tube the chamfer goes; 2 is usual, 0 leaves it off.":
    "Wie weit die Fase am Rohr entlang geht; 2 ist üblich, 0 lässt sie weg.",
  "A small 45° bevel on the edge of the bore; 0.2 is usual, 0 leaves it sharp.":
    "Eine kleine 45°-Fase an der Kante der Bohrung; 0,2 ist üblich, 0 lässt sie scharf.",
  "Extra length at each end, to be cut or sanded to fit; 0 prints the tube to size.":
    "Mehr Länge an jedem Ende, zum passenden Kürzen oder Schleifen; 0 druckt das Rohr auf Maß.",
  "A shallow ring on the tube that vanishes under the collar when it sits all the way in.":
    "Ein flacher Ring am Rohr, der unter dem Bund verschwindet, wenn es ganz eingesteckt ist.",
  "What the tube passes between its ports, in order; left empty, it takes the shortest way.":
    "Woran das Rohr zwischen seinen Anschlüssen vorbeikommt, der Reihe nach; leer nimmt es den kürzesten Weg.",
  "Two straights that meet in a bend.": "Zwei Geraden, die sich in einem Bogen treffen.",
  "Where the two straights would meet if the bend were sharp, from your datum.":
    "Wo sich die beiden Geraden träfen, wenn der Bogen scharf wäre, vom Bezugspunkt aus.",
  "The port whose same coordinate this one follows, so that a new measurement carries the corner along.":
    "Der Anschluss, dessen gleicher Koordinate diese folgt, sodass eine neue Messung die Ecke mitnimmt.",
  "How far beyond that port's coordinate; below zero is the other way.":
    "Wie weit hinter der Koordinate dieses Anschlusses; unter null in die andere Richtung.",
  "A point that the middle of the tube passes smoothly.":
    "Ein Punkt, durch den die Rohrmitte weich hindurchgeht.",
  "A point that the middle of the tube passes smoothly; points that follow each other make one curve.":
    "Ein Punkt, durch den die Rohrmitte weich hindurchgeht; aufeinanderfolgende Punkte ergeben eine Kurve.",
  "The port whose same coordinate this one follows, so that a new measurement carries the point along.":
    "Der Anschluss, dessen gleicher Koordinate diese folgt, sodass eine neue Messung den Punkt mitnimmt.",
  "The tube goes round an axis, as a screw thread does.":
    "Das Rohr läuft um eine Achse, wie ein Schraubengewinde.",
  "The point on the coil's axis level with the coil's first point, from your datum.":
    "Der Punkt auf der Achse der Wendel auf Höhe ihres ersten Punkts, vom Bezugspunkt aus.",
  "The port whose same coordinate this one follows, so that a new measurement carries the coil along.":
    "Der Anschluss, dessen gleicher Koordinate diese folgt, sodass eine neue Messung die Wendel mitnimmt.",
  "The direction in which the coil climbs; any length will do, 0, 0, 1 is up.":
    "Die Richtung, in der die Wendel steigt; jede Länge ist recht, 0, 0, 1 ist nach oben.",
  "From the axis to the middle of the tube where the coil starts; round a reservoir, its radius, the gap you want and half the tube.":
    "Von der Achse bis zur Rohrmitte, wo die Wendel beginnt; um einen Ausgleichsbehälter: sein Radius, der gewünschte Spalt und das halbe Rohr.",
  "Only where the coil opens or closes: its radius where it ends.":
    "Nur wo die Wendel weiter oder enger wird: ihr Radius am Ende.",
  "How far the coil climbs along its axis in one turn; more than the tube's outer diameter, or turns touch.":
    "Wie weit die Wendel je Windung entlang ihrer Achse steigt; mehr als der Außendurchmesser, sonst berühren sich die Windungen.",
  "How often it goes round; parts of a turn count, such as 2.25.":
    "Wie oft sie herumgeht; Teile einer Windung zählen, etwa 2,25.",
  "Right turns like a common screw as it climbs, left the other way.":
    "Rechts dreht im Steigen wie eine gewöhnliche Schraube, links andersherum.",
  "Where the coil starts, about its axis: 0 is towards z, or towards x where the axis is along z.":
    "Wo die Wendel um ihre Achse beginnt: 0 ist zu z hin, oder zu x, wo die Achse entlang z liegt.",
  "Only where this corner needs another radius than the rest of the run.":
    "Nur wo diese Ecke einen anderen Radius braucht als der Rest der Leitung.",
  "What is in the way, such as \"drive bay\".": "Was im Weg ist, etwa „Laufwerksschacht“.",
  "The box's corner with the smallest x, y and z, from your datum.":
    "Die Ecke des Quaders mit dem kleinsten x, y und z, vom Bezugspunkt aus.",
  "The box's corner with the largest x, y and z, from your datum.":
    "Die Ecke des Quaders mit dem größten x, y und z, vom Bezugspunkt aus.",
  "The middle of the cylinder's one end, from your datum.":
    "Die Mitte des einen Zylinderendes, vom Bezugspunkt aus.",
  "The middle of the cylinder's other end, from your datum.":
    "Die Mitte des anderen Zylinderendes, vom Bezugspunkt aus.",
  "Half of what calipers show across the cylinder.":
    "Die Hälfte dessen, was der Messschieber quer über den Zylinder zeigt.",
  "The least gap you want between a tube and anything else; 1 or more leaves room for measuring errors.":
    "Der kleinste gewünschte Spalt zwischen einem Rohr und allem anderen; 1 oder mehr lässt Platz für Messfehler.",
  "What the tubes are printed in: its mass, heat, strength and tightness.":
    "Worin die Rohre gedruckt werden: Masse, Wärme, Festigkeit und Dichtheit.",
  "What is written on the bottle, spool or order.":
    "Was auf Flasche, Spule oder Bestellung steht.",
  "Mass of one cubic centimetre of the printed part, from the maker's data sheet.":
    "Masse eines Kubikzentimeters des gedruckten Teils, aus dem Datenblatt des Herstellers.",
  "Resin, powder or filament; it tells how rough and how tight the wall is.":
    "Harz, Pulver oder Filament; es sagt, wie rau und wie dicht die Wand ist.",
  "Where it begins to turn from glassy to soft, from the maker's data sheet.":
    "Wo es beginnt, von glasig zu weich zu werden, aus dem Datenblatt des Herstellers.",
  "Polyamides are: they carry load above their glass transition, so that only heat deflection counts.":
    "Polyamide sind es: sie tragen auch über ihrem Glasübergang, sodass nur die Wärmeformbeständigkeit zählt.",
  "ISO 75 method B, or ASTM D648 at 66 psi, from the maker's data sheet.":
    "ISO 75 Verfahren B oder ASTM D648 bei 66 psi, aus dem Datenblatt des Herstellers.",
  "ISO 75 method A, or ASTM D648 at 264 psi, from the maker's data sheet.":
    "ISO 75 Verfahren A oder ASTM D648 bei 264 psi, aus dem Datenblatt des Herstellers.",
  "At break or yield, whichever is less, in the direction that it is strongest.":
    "Beim Bruch oder an der Streckgrenze, was kleiner ist, in der Richtung, in der es am festesten ist.",
  "How stiff it is, from the maker's data sheet; 2.2 GPa is 2200 MPa.":
    "Wie steif es ist, aus dem Datenblatt des Herstellers; 2,2 GPa sind 2200 MPa.",
  "How far it stretches before it breaks; below 5 it is brittle.":
    "Wie weit es sich dehnt, bevor es bricht; unter 5 ist es spröde.",
  "How much it grows with heat; most plastics 60 to 150.":
    "Wie sehr es mit Wärme wächst; die meisten Kunststoffe 60 bis 150.",
  "Mass of water that it takes up until it takes no more; it swells and softens.":
    "Masse an Wasser, die es aufnimmt, bis es keines mehr aufnimmt; es quillt und wird weicher.",
  "Strength across the layers as a share of that along them: 1 is the same in all directions.":
    "Festigkeit quer zu den Schichten als Anteil von der längs: 1 ist in allen Richtungen gleich.",
  "The wall from which it holds water as printed; leave it empty where it weeps at any wall.":
    "Die Wandstärke, ab der es wie gedruckt Wasser hält; leer lassen, wo es bei jeder Wand schwitzt.",
  "How uneven the bore is as printed: resin 2 to 10, powder 20 to 60, filament 50 to 150.":
    "Wie uneben die Bohrung wie gedruckt ist: Harz 2 bis 10, Pulver 20 bis 60, Filament 50 bis 150.",
  "What a litre of it costs you, in your own money; by weight, multiply the price of a kilogram by the density.":
    "Was ein Liter davon kostet, in eigener Währung; nach Gewicht den Preis je Kilogramm mit der Dichte malnehmen.",
  "How the material looks, for the picture alone; nothing is reckoned with it.":
    "Wie das Material aussieht, nur für das Bild; gerechnet wird damit nichts.",
  "Clear and translucent tubes show their bore and the coolant in it.":
    "Klare und durchscheinende Rohre zeigen ihre Bohrung und das Kühlmittel darin.",
  "The colour of the finished tube by daylight: six hexadecimal digits after a number sign.":
    "Die Farbe des fertigen Rohrs bei Tageslicht: sechs Hexadezimalziffern nach einem Rautezeichen.",
  "What to mind with this material.": "Was bei diesem Material zu beachten ist.",
  "Where the figures come from.": "Woher die Werte kommen.",
  "Share of its strength that a printed tube keeps at 50 °C; common practice, no source.":
    "Anteil der Festigkeit, den ein gedrucktes Rohr bei 50 °C behält; allgemein üblich, ohne Quelle.",
  "Share of its strength that is left under a load that lasts; 0.3 to 0.5 is common practice, no source.":
    "Anteil der Festigkeit, der unter dauernder Last bleibt; 0,3 bis 0,5 ist allgemein üblich, ohne Quelle.",
  "What the tube must hold beside all that; 4 or more for printed parts is common practice, no source.":
    "Was das Rohr neben alldem halten muss; 4 oder mehr für gedruckte Teile ist allgemein üblich, ohne Quelle.",
  "The class of printer the tubes are printed on.":
    "Die Klasse des Druckers, auf dem die Rohre gedruckt werden.",
  "A name for your printer, or the service's.":
    "Ein Name für den eigenen Drucker oder den des Dienstes.",
  "The largest part it takes: width, depth and height.":
    "Das größte Teil, das er fasst: Breite, Tiefe und Höhe.",
  "The thinnest wall that it prints well.": "Die dünnste Wand, die er gut druckt.",
  "How far a printed diameter may be off, plus or minus; print a ring and measure it.":
    "Um wie viel ein gedruckter Durchmesser danebenliegen kann, plus oder minus; einen Ring drucken und messen.",
  "Kept free along each side of the build volume, and under the part for its supports; 5 is common practice.":
    "Freigehalten entlang jeder Seite des Bauraums und unter dem Teil für seine Stützen; 5 ist allgemein üblich.",
  "How thick a layer is: resin 0.025 to 0.1, powder 0.08 to 0.12, filament 0.08 to 0.3.":
    "Wie dick eine Schicht ist: Harz 0,025 bis 0,1, Pulver 0,08 bis 0,12, Filament 0,08 bis 0,3.",
  "The width that it draws with: a screen's pixel, a laser's spot, the nozzle.":
    "Die Breite, mit der er zeichnet: Pixel des Bildschirms, Punkt des Lasers, die Düse.",
  "Least angle from level of a skin that faces the plate and needs no support: resin 19, filament 45; empty for powder.":
    "Kleinster Winkel gegen die Waagerechte, bei dem eine zur Platte zeigende Haut keine Stütze braucht: Harz 19, Filament 45; leer bei Pulver.",
  "Least angle from level of a bore that is printed without support inside: 30 for resin is common practice.":
    "Kleinster Winkel gegen die Waagerechte, bei dem eine Bohrung ohne Stützen innen gedruckt wird: 30 bei Harz ist allgemein üblich.",
  "The longest gap that it prints over without support.":
    "Der längste Spalt, den er ohne Stützen überdruckt.",
  "Exposure and lift together; look it up in the settings of your last print.":
    "Belichten und Abheben zusammen; in den Einstellungen des letzten Drucks nachsehen.",
  "How many triangles a file may have before the printer or the service is slow or refuses it.":
    "Wie viele Dreiecke eine Datei haben darf, bevor Drucker oder Dienst langsam werden oder sie ablehnen.",
  "The largest file that the service takes.": "Die größte Datei, die der Dienst annimmt.",
  "How far one piece goes into the next; two thirds of the outer diameter is common practice, no source.":
    "Wie weit ein Teilstück in das nächste geht; zwei Drittel des Außendurchmessers sind allgemein üblich, ohne Quelle.",
  "Gap for the adhesive on every side of the spigot: 0.05 to 0.2 is common practice, no source. See the adhesive's data sheet.":
    "Spalt für den Klebstoff rings um den Zapfen: 0,05 bis 0,2 ist allgemein üblich, ohne Quelle. Siehe Datenblatt des Klebstoffs.",
  "Wall of the socket round the spigot; never less than the tube's own or the printer's least.":
    "Wand der Muffe um den Zapfen; nie weniger als die des Rohrs oder die kleinste des Druckers.",
  "How far the spigot is out of round, so that it goes in one way only; 0 leaves it round.":
    "Wie unrund der Zapfen ist, damit er nur in einer Lage hineingeht; 0 lässt ihn rund.",
  "Shear strength of the adhesive on this plastic, from its data sheet; halve it for warm water. 5 is from memory, unverified.":
    "Scherfestigkeit des Klebstoffs auf diesem Kunststoff, aus seinem Datenblatt; für warmes Wasser halbieren. 5 ist aus dem Gedächtnis, ungeprüft.",
  "What the service asks for, in your own money, from its offer or its price list. Leave it out where you print yourself.":
    "Was der Dienst verlangt, in eigener Währung, aus seinem Angebot oder seiner Preisliste. Weglassen, wo selbst gedruckt wird.",
  "What a cubic centimetre of the part costs; leave it empty where it is not known.":
    "Was ein Kubikzentimeter des Teils kostet; leer lassen, wo es nicht bekannt ist.",
  "What is asked for each piece beside its material, such as for handling and cleaning; 0 for none.":
    "Was je Stück neben dem Material verlangt wird, etwa für Handhabung und Reinigung; 0 für nichts.",
  "What an order costs at least, however little is in it; 0 for none.":
    "Was ein Auftrag mindestens kostet, gleich wie wenig darin ist; 0 für nichts.",
  "Where the prices come from, such as an offer and its date.":
    "Woher die Preise kommen, etwa ein Angebot und sein Datum.",
  "Print a coupon, try its ends in the fitting and measure it: the files are then corrected for how your printer prints.":
    "Eine Passprobe drucken, ihre Enden in der Verschraubung probieren und messen: danach werden die Dateien nach dem korrigiert, wie der eigene Drucker druckt.",
  "The material that the coupon was printed in; for another one the readings are kept but not used.":
    "Das Material, in dem die Passprobe gedruckt wurde; für ein anderes bleiben die Messwerte, werden aber nicht verwendet.",
  "The printer that the coupon was printed on; for another one the readings are kept but not used.":
    "Der Drucker, auf dem die Passprobe gedruckt wurde; für einen anderen bleiben die Messwerte, werden aber nicht verwendet.",
  "What the end that you measure has in the file: count its rings.":
    "Was das gemessene Ende in der Datei hat: seine Ringe zählen.",
  "Between the chamfer and the first ring, the mean of two readings a quarter turn apart; leave it empty until it is read.":
    "Zwischen der Fase und dem ersten Ring, das Mittel aus zwei Ablesungen um eine Vierteldrehung versetzt; leer lassen, bis abgelesen ist.",
  "The thickest drill shank that slides in reads truer than the jaws, which read small bores too small.":
    "Der dickste Bohrerschaft, der hineingleitet, sagt die Wahrheit eher als die Messschenkel, die kleine Bohrungen zu klein lesen.",
  "What you measure has this length in the file; the longer it is, the truer the reading.":
    "Was gemessen wird, hat in der Datei diese Länge; je länger, desto wahrer die Messung.",
  "From end face to end face; leave it empty until it is read.":
    "Von Stirnfläche zu Stirnfläche; leer lassen, bis abgelesen ist.",
  "It goes in by hand and does not wobble; from then on tubes of that size are aimed at what it measures.":
    "Es geht von Hand hinein und wackelt nicht; von da an zielen Rohre dieses Maßes auf das, was es misst.",
  "The outer diameter that the runs for this fitting are stated with.":
    "Der Außendurchmesser, mit dem die Leitungen für diese Verschraubung angegeben sind.",
  "What your calipers read over the outside of the end that fitted best.":
    "Was der Messschieber außen am Ende abliest, das am besten passte.",
  "How much coolant goes round; 60 to 300 litres an hour is usual.":
    "Wie viel Kühlmittel umläuft; 60 bis 300 Liter je Stunde sind üblich.",
  "What the loop is filled with.": "Womit der Kreislauf gefüllt ist.",
  "What is written on the bottle.": "Was auf der Flasche steht.",
  "Mass of one cubic centimetre at the working temperature, from the maker's data sheet.":
    "Masse eines Kubikzentimeters bei Betriebstemperatur, aus dem Datenblatt des Herstellers.",
  "Water, or water with one of the two glycols; leave it out where you know its viscosity.":
    "Wasser, oder Wasser mit einem der beiden Glykole; weglassen, wo die Viskosität bekannt ist.",
  "Share of the mass that is glycol; a coolant that is ready for use has 20 to 30.":
    "Massenanteil des Glykols; ein gebrauchsfertiges Kühlmittel hat 20 bis 30.",
  "Dynamic viscosity at the working temperature, from the maker's data sheet; water has 0.65 at 40 °C.":
    "Dynamische Viskosität bei Betriebstemperatur, aus dem Datenblatt des Herstellers; Wasser hat 0,65 bei 40 °C.",
  "The room's temperature when the tubes go in: what they grow from.":
    "Die Raumtemperatur beim Einbau der Rohre: von ihr aus wachsen sie.",
  "The coolant's usual temperature under load; 25 to 45 is usual.":
    "Die übliche Temperatur des Kühlmittels unter Last; 25 bis 45 ist üblich.",
  "The hottest the coolant may get before the machine shuts down; 60 is usual.":
    "So heiß kann das Kühlmittel höchstens werden, bevor der Rechner abschaltet; 60 ist üblich.",
  "Pressure over the air's in the loop: the pump's head plus the height of coolant; 10 to 60 is usual.":
    "Druck über dem der Luft im Kreislauf: die Förderhöhe der Pumpe und die Höhe des Kühlmittels; 10 bis 60 ist üblich.",
  "Pressure over the air's that the tubes are tested at: twice the working pressure is common practice, no source.":
    "Druck über dem der Luft, mit dem die Rohre geprüft werden: das Doppelte des Betriebsdrucks ist allgemein üblich, ohne Quelle.",
  "Which way is up when the machine runs, along your axes: [0, 0, 1] is along z.":
    "Wo oben ist, wenn der Rechner läuft, in den eigenen Achsen: [0, 0, 1] ist entlang z.",
  "What the cooled parts give off under load: add up their rated powers.":
    "Was die gekühlten Bauteile unter Last abgeben: ihre Nennleistungen zusammenzählen.",
  "What drives the coolant, by its curve: head against flow.":
    "Was das Kühlmittel antreibt, mit seiner Kennlinie: Förderhöhe über Durchfluss.",
  "A name for your pump.": "Ein Name für die eigene Pumpe.",
  "A flow of the pump's curve; the first is no flow, and each is more than the one before.":
    "Ein Durchfluss der Pumpenkennlinie; der erste ist null, jeder weitere größer als der davor.",
  "How high it lifts coolant at that flow, from the data sheet; 1 m is 9.8 kPa. It falls as the flow grows.":
    "Wie hoch sie das Kühlmittel bei diesem Durchfluss hebt, aus dem Datenblatt; 1 m sind 9,8 kPa. Es fällt, wenn der Durchfluss steigt.",
  "What you call it, such as \"processor block\".": "Wie es heißen soll, etwa „Prozessorkühler“.",
  "What it costs at the flow beside, from the maker's or a tester's curve; 1 psi is 6.9 kPa.":
    "Was es beim Durchfluss daneben kostet, aus der Kurve des Herstellers oder eines Prüfers; 1 psi sind 6,9 kPa.",
  "The flow that the pressure drop is stated at; 1 US gallon a minute is 227.":
    "Der Durchfluss, bei dem der Druckverlust angegeben ist; 1 US-Gallone je Minute sind 227.",
  "How much coolant it holds: fill it from a jug and see.":
    "Wie viel Kühlmittel es fasst: aus einem Messbecher füllen und nachsehen.",
  "Shut air in, let it settle for some minutes, read the gauge and a thermometer, and read both again later.":
    "Luft einschließen, einige Minuten setzen lassen, Manometer und Thermometer ablesen und beide später noch einmal.",
  "How much air is shut in, hoses and gauge included; leave it empty where it is the whole loop's.":
    "Wie viel Luft eingeschlossen ist, Schläuche und Manometer eingeschlossen; leer lassen, wo es die des ganzen Kreislaufs ist.",
  "What the gauge shows once it has settled; 50 kPa is 0.5 bar or 7.3 psi, and the most to use with air.":
    "Was das Manometer zeigt, sobald es ruhig steht; 50 kPa sind 0,5 bar oder 7,3 psi und das Höchste mit Luft.",
  "What the gauge shows at the end of the test; leave it empty until then.":
    "Was das Manometer am Ende der Prüfung zeigt; bis dahin leer lassen.",
  "Of the loop itself when you read the gauge: hold a thermometer to a block.":
    "Die des Kreislaufs selbst beim Ablesen des Manometers: ein Thermometer an einen Kühlblock halten.",
  "The same at the end: one kelvin less looks like half a kilopascal lost.":
    "Ebenso am Ende: ein Kelvin weniger sieht aus wie ein halbes Kilopascal Verlust.",
  "Time between the two readings: 15 to 60 minutes is common practice, no source.":
    "Zeit zwischen den beiden Ablesungen: 15 bis 60 Minuten sind allgemein üblich, ohne Quelle.",
  "Of the air about you, absolute; 101.325 at the sea, some 10 less 900 m up. The weather moves it by 1 or 2.":
    "Der Luft ringsum, absolut; 101,325 am Meer, etwa 10 weniger 900 m höher. Das Wetter bewegt ihn um 1 oder 2.",
  "What may leak in the time beside, after the part that is temperature: 0.5 kPa in 10 minutes is common practice, no source.":
    "Was in der Zeit daneben entweichen darf, nach Abzug der Temperatur: 0,5 kPa in 10 Minuten ist allgemein üblich, ohne Quelle.",
  "The time that the limit is for.": "Die Zeit, für die die Grenze gilt.",
};
