// German for the kinds of findings and what they mean.

/** @type {Record<string, string>} */
export const FINDINGS = {
  // titles
  "Bend radius too small": "Biegeradius zu klein",
  "Bend radius below the outer diameter": "Biegeradius unter dem Außendurchmesser",
  "Coil too tight": "Wendel zu eng",
  "Smooth curve too tight": "Weiche Kurve zu eng",
  "Bent to less than the outer diameter": "Enger gebogen als der Außendurchmesser",
  "Too little room to share": "Zu wenig Platz zum Teilen",
  "Bends made as large as fits": "Bögen so groß wie möglich gemacht",
  "Corners too close together": "Ecken zu nah beieinander",
  "Bend too close to the fitting": "Bogen zu nah an der Verschraubung",
  "Corner out of reach": "Ecke außer Reichweite",
  "Corner turns straight back": "Ecke kehrt geradewegs um",
  "Same point twice": "Zweimal derselbe Punkt",
  "Ports too close for the bend radius": "Anschlüsse zu nah für den Biegeradius",
  "Tube makes a loop": "Rohr macht eine Schleife",
  "Corner just off its port's line": "Ecke knapp neben der Anschlussachse",
  "Tube does not fit its fitting": "Rohr passt nicht in seine Verschraubung",
  "Wall too thin": "Wand zu dünn",
  "Chamfer leaves too little wall": "Fase lässt zu wenig Wand",
  "No room for a joint": "Kein Platz für eine Verbindung",
  "Body's wall too thin": "Wand des Körpers zu dünn",
  "No room for the body's shape": "Kein Platz für die Form des Körpers",
  "Chamfer too long": "Fase zu lang",
  "Fit not measured": "Passung nicht gemessen",
  "Reading looks like a slip": "Messwert sieht nach einem Versehen aus",
  "Outer diameters and bores exchanged": "Außen- und Innendurchmesser vertauscht",
  "Coupon of another printer or material": "Passprobe von anderem Drucker oder Material",
  "Correction leaves no wall": "Korrektur lässt keine Wand",
  "Far from the datum": "Weit vom Bezugspunkt",
  "Tube meets itself": "Rohr trifft sich selbst",
  "Tube meets another tube": "Rohr trifft ein anderes Rohr",
  "Tube meets a fitting": "Rohr trifft eine Verschraubung",
  "Tube meets a keep-out": "Rohr trifft eine Sperrzone",
  "Fittings close together": "Verschraubungen nah beieinander",
  "Fitting close to a keep-out": "Verschraubung nah an einer Sperrzone",
  "Not all gaps checked": "Nicht alle Abstände geprüft",
  "More findings": "Weitere Befunde",
  "Port without a tube": "Anschluss ohne Rohr",
  "Port used more than once": "Anschluss mehrfach benutzt",
  "Fitting in no port": "Verschraubung in keinem Anschluss",
  "Short tube between rough measurements": "Kurzes Rohr zwischen groben Messungen",
  "Port measured roughly": "Anschluss grob gemessen",
  "Ports further off than the tube can make up":
    "Anschlüsse weiter daneben, als das Rohr ausgleichen kann",
  "Trim covers what the ports may be off by": "Zugabe deckt den Messfehler der Anschlüsse",
  "Goes straight in": "Geht gerade hinein",
  "One part comes last": "Ein Bauteil kommt zuletzt",
  "Stiff tube between two ports of one part":
    "Steifes Rohr zwischen zwei Anschlüssen eines Bauteils",
  "In the way when the tube goes in": "Im Weg, wenn das Rohr hineingeht",
  "Order of assembly": "Reihenfolge des Einbaus",
  "Tubes in each other's way": "Rohre einander im Weg",
  "Material softens": "Material wird weich",
  "Grows with heat": "Wächst mit der Wärme",
  "Material's figures missing": "Werte des Materials fehlen",
  "Pressure uses up the material's strength": "Druck braucht die Festigkeit des Materials auf",
  "Brittle material": "Sprödes Material",
  "Joint is loaded much": "Verbindung stark belastet",
  "Wall may weep": "Wand kann schwitzen",
  "Ring does not seal for sure": "Ring dichtet nicht sicher",
  "Ring fills its groove": "Ring füllt seine Nut",
  "Chamfer too small for the ring": "Fase zu klein für den Ring",
  "Tube chokes the flow": "Rohr drosselt den Durchfluss",
  "No flow": "Kein Durchfluss",
  "Flow cannot be reckoned": "Durchfluss nicht zu berechnen",
  "Pump drives less than the stated flow": "Pumpe treibt weniger als den angegebenen Durchfluss",
  "Pump's curve does not meet the loop": "Pumpenkennlinie trifft den Kreislauf nicht",
  "Leaks": "Undicht",
  "Too much air": "Zu viel Luft",
  "Test too short": "Prüfung zu kurz",
  "Test cannot be read": "Prüfung nicht auszuwerten",
  "Keeps air": "Behält Luft",
  "Keeps coolant": "Behält Kühlmittel",
  "Does not fit the printer": "Passt nicht in den Drucker",
  "Bore flatter than it prints well": "Bohrung flacher, als sie gut druckt",
  "Ceiling of the bore wider than a bridge": "Decke der Bohrung breiter als eine Brücke",
  "Finer than the printer draws": "Feiner, als der Drucker zeichnet",
  "Bore closes into a cup": "Bohrung wird zur Mulde",
  "Support on a sealing band": "Stützen an einer Dichtfläche",
  "Powder is hard to get out": "Pulver ist schwer herauszubekommen",
  // meanings
  "The radius is that of the tube's middle line. At half the outer diameter or less the inside of the bend would fold into itself, so no such tube exists.":
    "Der Radius ist der der Rohrmittellinie. Bei halbem Außendurchmesser oder weniger würde sich die Innenseite des Bogens in sich falten, ein solches Rohr gibt es also nicht.",
  "It can be printed, but so tight a bend slows the coolant and is hard to support and to clean.":
    "Drucken lässt es sich, aber ein so enger Bogen bremst das Kühlmittel und ist schwer zu stützen und zu reinigen.",
  "The tube's middle line is bent too sharply in the coil. At half the outer diameter or less the tube's inside would fold into itself.":
    "Die Rohrmittellinie ist in der Wendel zu scharf gebogen. Bei halbem Außendurchmesser oder weniger würde sich die Innenseite des Rohrs in sich falten.",
  "The points leave the curve too little room to turn. At half the outer diameter or less the tube's inside would fold into itself.":
    "Die Punkte lassen der Kurve zu wenig Platz zum Drehen. Bei halbem Außendurchmesser oder weniger würde sich die Innenseite des Rohrs in sich falten.",
  "Bends share the straights between their corners, but what this one is left is less than a tube needs.":
    "Bögen teilen sich die Geraden zwischen ihren Ecken, aber was diesem bleibt, ist weniger, als ein Rohr braucht.",
  "You asked for bends as large as fits. Where corners are close together they share the room, so their radii are smaller than the one stated.":
    "Verlangt sind Bögen so groß wie möglich. Wo Ecken nah beieinander liegen, teilen sie sich den Platz, sodass ihre Radien kleiner sind als der angegebene.",
  "Each bend takes up some of the straight on both sides of its corner. These two want more than there is.":
    "Jeder Bogen nimmt etwas von der Geraden auf beiden Seiten seiner Ecke. Diese zwei wollen mehr, als da ist.",
  "The tube must come straight out of the fitting for a while, or the ring seals badly and the tube cannot be pushed in.":
    "Das Rohr muss eine Weile gerade aus der Verschraubung kommen, sonst dichtet der Ring schlecht und das Rohr lässt sich nicht einschieben.",
  "A corner that is not straight in front of its port is reached by one more bend after the fitting. This one lies inside that bend's circle.":
    "Eine Ecke, die nicht gerade vor ihrem Anschluss liegt, wird mit einem weiteren Bogen nach der Verschraubung erreicht. Diese liegt im Kreis dieses Bogens.",
  "The way on leads back over the way in. A tube needs room beside itself to turn round.":
    "Der Weg weiter führt über den Weg hinein zurück. Ein Rohr braucht Platz neben sich, um umzukehren.",
  "Two points in a row are the same, so there is no direction from one to the next.":
    "Zwei Punkte hintereinander sind gleich, sodass es keine Richtung vom einen zum nächsten gibt.",
  "Without corners the tube takes the shortest way of one bend, a straight and one bend. These ports are so close, or face so, that it would have to loop.":
    "Ohne Ecken nimmt das Rohr den kürzesten Weg aus einem Bogen, einer Geraden und einem Bogen. Diese Anschlüsse sind so nah oder zeigen so, dass es eine Schleife machen müsste.",
  "The tube turns more than half round to get where it is going. It can be made, but it wastes tube and traps air.":
    "Das Rohr dreht um mehr als eine halbe Drehung, um ans Ziel zu kommen. Es ist machbar, verschwendet aber Rohr und fängt Luft.",
  "The corner next to a fitting is not quite in line with it, so the tube gets a tiny extra bend that nobody meant. Corners tied to the port stay in line when it is measured again.":
    "Die Ecke neben einer Verschraubung liegt nicht ganz auf ihrer Achse, sodass das Rohr einen winzigen zusätzlichen Bogen bekommt, den niemand wollte. An den Anschluss gebundene Ecken bleiben in der Achse, wenn neu gemessen wird.",
  "A fitting seals on one outer diameter only: a thinner tube leaks, a thicker one does not go in.":
    "Eine Verschraubung dichtet nur auf einem Außendurchmesser: ein dünneres Rohr leckt, ein dickeres geht nicht hinein.",
  "A wall under what the printer makes well comes out with holes or breaks when the tube is pushed in.":
    "Eine Wand unter dem, was der Drucker gut kann, bekommt Löcher oder bricht beim Einschieben.",
  "The chamfer and the inner edge break take wall away at the tube's very end, where it is pushed hardest.":
    "Die Fase und der Kantenbruch innen nehmen Wand weg, ganz am Ende des Rohrs, wo am stärksten geschoben wird.",
  "A bonded joint needs plain tube on a straight or an even bend, outside the fittings' bands and leads, as long as its spigot, its collar and its marks.":
    "Eine geklebte Verbindung braucht glattes Rohr auf einer Geraden oder einem gleichmäßigen Bogen, außerhalb der Bänder und Ausläufe der Verschraubungen, so lang wie ihr Zapfen, ihr Bund und ihre Marken.",
  "Grooves and a slimmer body take wall away. A wall under what the printer makes well comes out with holes, or bursts.":
    "Rillen und ein schlankerer Körper nehmen Wand weg. Eine Wand unter dem, was der Drucker gut kann, bekommt Löcher oder platzt.",
  "The body's shape begins after the one fitting's lead and ends before the other's. Between them the tube is too short for it to come and go.":
    "Die Form des Körpers beginnt nach dem Auslauf der einen Verschraubung und endet vor dem der anderen. Dazwischen ist das Rohr zu kurz für ihren Übergang.",
  "The chamfer reaches to where the tube must be round and full: the ring's place, or the first bend.":
    "Die Fase reicht bis dorthin, wo das Rohr rund und voll sein muss: an den Platz des Rings oder den ersten Bogen.",
  "A ring seals on tenths of a millimetre, and no two printers print them alike. A coupon costs a few grams and shows it before the tubes are printed.":
    "Ein Ring dichtet auf Zehntelmillimeter, und keine zwei Drucker drucken sie gleich. Eine Passprobe kostet ein paar Gramm und zeigt es, bevor die Rohre gedruckt werden.",
  "No print is that far off. A slip among the readings would spoil every file, so none is corrected until it is put right.":
    "Kein Druck liegt so weit daneben. Ein Versehen unter den Messwerten würde jede Datei verderben, darum wird keine korrigiert, bis es berichtigt ist.",
  "A tube is wider than its bore. No file is corrected until the readings say so.":
    "Ein Rohr ist weiter als seine Bohrung. Keine Datei wird korrigiert, bis die Messwerte das sagen.",
  "What one printer does with one material says nothing about another.":
    "Was ein Drucker mit einem Material macht, sagt nichts über einen anderen.",
  "The files make up for how the printer prints: a thicker tube by a thinner file. Here nothing is left of it.":
    "Die Dateien gleichen aus, wie der Drucker druckt: ein dickeres Rohr mit einer dünneren Datei. Hier bleibt davon nichts übrig.",
  "The files hold coordinates with seven digits. So far out they move the skin noticeably; a machine is a metre or two at most, so it may also be a slip of the keys.":
    "Die Dateien halten Koordinaten mit sieben Stellen. So weit draußen verschieben sie die Haut merklich; ein Rechner ist höchstens einen oder zwei Meter groß, es kann also auch ein Tippfehler sein.",
  "Two parts of the same tube come closer than the clearance you asked for, or into each other.":
    "Zwei Teile desselben Rohrs kommen sich näher als der verlangte Abstand oder ineinander.",
  "Two tubes come closer than the clearance you asked for, or into each other.":
    "Zwei Rohre kommen sich näher als der verlangte Abstand oder ineinander.",
  "The tube comes into the room that a fitting's collar needs to be turned.":
    "Das Rohr kommt in den Raum, den der Bund einer Verschraubung zum Drehen braucht.",
  "The tube comes into space that you said must stay free, or closer to it than the clearance.":
    "Das Rohr kommt in Raum, der frei bleiben soll, oder näher heran als der Abstand.",
  "A fitting is turned in by hand or with a wrench, which wants a gap round its collar.":
    "Eine Verschraubung wird von Hand oder mit dem Schlüssel eingedreht, was rings um ihren Bund einen Spalt braucht.",
  "The collar comes into space that you said must stay free, or closer to it than the clearance.":
    "Der Bund kommt in Raum, der frei bleiben soll, oder näher heran als der Abstand.",
  "The design has more tubes close together than can be held against one another in a moment. Gaps that are not told may still be too small.":
    "Der Entwurf hat mehr Rohre nah beieinander, als sich in einem Augenblick gegeneinander halten lassen. Nicht genannte Abstände können noch zu klein sein.",
  "There is so much to say about this design that only the worst of it is told.":
    "Zu diesem Entwurf ist so viel zu sagen, dass nur das Schlimmste davon genannt wird.",
  "An open port leaks. It needs a tube or a plug.":
    "Ein offener Anschluss leckt. Er braucht ein Rohr oder einen Stopfen.",
  "A port takes one fitting, and a fitting one tube.":
    "Ein Anschluss nimmt eine Verschraubung, und eine Verschraubung ein Rohr.",
  "It is in the list of fittings but no port carries it. That does no harm.":
    "Sie steht in der Liste der Verschraubungen, aber kein Anschluss trägt sie. Das schadet nicht.",
  "The ports may be off by so much, for so short a tube, that its ends lean in their sockets.":
    "Die Anschlüsse können für ein so kurzes Rohr so weit danebenliegen, dass seine Enden schief in ihren Aufnahmen stehen.",
  "A tube that ends beside its socket loads the ring from one side.":
    "Ein Rohr, das neben seiner Aufnahme endet, belastet den Ring einseitig.",
  "A tube that comes out too short does not reach the stop in its socket. Trim is spare length at each end, cut or sanded off until the tube fits.":
    "Ein zu kurzes Rohr erreicht den Anschlag in seiner Aufnahme nicht. Zugabe ist Länge in Reserve an jedem Ende, die abgeschnitten oder abgeschliffen wird, bis das Rohr passt.",
  "Cut the tube's ends back until it fits; what is spare is marked by a ring.":
    "Die Rohrenden kürzen, bis es passt; was Zugabe ist, zeigt ein Ring.",
  "Both ends leave their sockets the same way, so a stiff tube goes into both at once, and no part has to move for it.":
    "Beide Enden verlassen ihre Aufnahmen in derselben Richtung, sodass ein steifes Rohr in beide zugleich geht und kein Bauteil dafür weichen muss.",
  "A stiff tube that sits in one socket can only slide along it, so it cannot be slid into a second one that points another way: one of the two parts is brought on to the tube's end last. A fitting that is screwed into its part with the tube already in it needs only the length of its thread instead.":
    "Ein steifes Rohr, das in einer Aufnahme sitzt, kann nur entlang dieser gleiten; in eine zweite, die anderswohin zeigt, lässt es sich nicht schieben: eines der beiden Bauteile wird zuletzt auf das Rohrende geführt. Eine Verschraubung, die mit dem Rohr darin in ihr Bauteil geschraubt wird, braucht stattdessen nur die Länge ihres Gewindes.",
  "A stiff tube slides into two sockets only if its ends leave them the same way. Here they do not, and both sockets are on one part, so neither can be brought on last.":
    "Ein steifes Rohr gleitet nur dann in zwei Aufnahmen, wenn seine Enden sie in derselben Richtung verlassen. Hier tun sie das nicht, und beide Aufnahmen sind an einem Bauteil, sodass keine zuletzt herangeführt werden kann.",
  "The tube is clear once it is home, but something stands where it passes while it is pushed in.":
    "Das Rohr ist frei, sobald es sitzt, aber etwas steht dort, wo es beim Einschieben entlangkommt.",
  "Tubes whose part must come last are put in while parts can still be moved; a tube that goes straight in can wait until every part stands. No tube comes after one that would be in its way.":
    "Rohre, deren Bauteil zuletzt kommen muss, werden eingesetzt, solange sich Bauteile noch bewegen lassen; ein Rohr, das gerade hineingeht, kann warten, bis jedes Bauteil steht. Kein Rohr kommt nach einem, das ihm im Weg wäre.",
  "Each of these tubes, once in place, is in the way of another one going in.":
    "Jedes dieser Rohre ist, einmal eingesetzt, dem Einsetzen eines anderen im Weg.",
  "A printed tube under pressure creeps well below the temperature at which it bends. When the pump stops, the coolant is at its hottest, and a soft tube lets go of its fitting.":
    "Ein gedrucktes Rohr unter Druck kriecht schon weit unter der Temperatur, bei der es sich biegt. Wenn die Pumpe stehen bleibt, ist das Kühlmittel am heißesten, und ein weiches Rohr löst sich aus seiner Verschraubung.",
  "Warm tubes are longer. What the sockets do not take up bends the tube and loads its rings.":
    "Warme Rohre sind länger. Was die Aufnahmen nicht aufnehmen, biegt das Rohr und belastet seine Ringe.",
  "Without the figures of its data sheet nothing can be told of how it stands heat and pressure.":
    "Ohne die Werte seines Datenblatts lässt sich nicht sagen, wie es Wärme und Druck aushält.",
  "What a printed wall holds for years in warm coolant is a small part of its data sheet's strength.":
    "Was eine gedruckte Wand über Jahre in warmem Kühlmittel hält, ist ein kleiner Teil der Festigkeit im Datenblatt.",
  "A brittle tube does not burst: it cracks at the collar's edge, along a layer, when it is clamped askew.":
    "Ein sprödes Rohr platzt nicht: es reißt an der Kante des Bunds, entlang einer Schicht, wenn es schief geklemmt wird.",
  "A bonded joint that lets go lets all the coolant out at once.":
    "Eine geklebte Verbindung, die aufgeht, lässt alles Kühlmittel auf einmal heraus.",
  "Some processes leave fine ways through the wall: a drop a day is enough to kill a graphics card.":
    "Manche Verfahren lassen feine Wege durch die Wand: ein Tropfen am Tag genügt, um eine Grafikkarte zu zerstören.",
  "A ring seals by being squeezed: too little and it leaks, too much and it is torn when the tube goes in.":
    "Ein Ring dichtet, indem er verpresst wird: zu wenig, und er leckt; zu viel, und er reißt beim Einschieben des Rohrs.",
  "Rubber gives way but does not shrink: a ring without room in its groove jams the tube, or is cut.":
    "Gummi gibt nach, schrumpft aber nicht: ein Ring ohne Platz in seiner Nut klemmt das Rohr oder wird zerschnitten.",
  "The tube must be slimmer at its tip than the ring is wide, or its edge cuts the ring on the way in.":
    "Das Rohr muss an der Spitze schlanker sein als der Ring weit, sonst zerschneidet seine Kante den Ring auf dem Weg hinein.",
  "A tube should cost a small part of what the pump can give; the blocks need the rest.":
    "Ein Rohr soll einen kleinen Teil dessen kosten, was die Pumpe geben kann; die Kühlblöcke brauchen den Rest.",
  "Coolant that stands still cools nothing, and costs no pressure.":
    "Kühlmittel, das steht, kühlt nichts und kostet keinen Druck.",
  "What a tube costs the pump follows from the coolant's viscosity at its temperature.":
    "Was ein Rohr die Pumpe kostet, folgt aus der Viskosität des Kühlmittels bei seiner Temperatur.",
  "Pump and loop agree on the flow at which the pump keeps up just what tubes and parts cost. At less flow the coolant leaves the blocks warmer.":
    "Pumpe und Kreislauf einigen sich auf den Durchfluss, bei dem die Pumpe gerade aufbringt, was Rohre und Bauteile kosten. Bei weniger Durchfluss verlässt das Kühlmittel die Kühlblöcke wärmer.",
  "The operating point lies where the pump's curve and what the loop costs cross.":
    "Der Betriebspunkt liegt, wo sich die Kennlinie der Pumpe und der Bedarf des Kreislaufs kreuzen.",
  "Air that is shut in loses pressure when it cools and when it leaks; only the second is held against the limit.":
    "Eingeschlossene Luft verliert Druck, wenn sie abkühlt und wenn sie entweicht; nur das zweite zählt gegen die Grenze.",
  "Air under pressure is a spring: a part that bursts flies. A loop is tested with little.":
    "Luft unter Druck ist eine Feder: ein Bauteil, das platzt, fliegt. Ein Kreislauf wird mit wenig geprüft.",
  "A pinhole takes its time, and so does the air until it is as warm as the loop.":
    "Ein feines Loch braucht seine Zeit, und die Luft auch, bis sie so warm ist wie der Kreislauf.",
  "How fast it leaks follows from the volume of air and how far its pressure falls.":
    "Wie schnell es leckt, folgt aus dem Volumen der Luft und dem Abfall ihres Drucks.",
  "Air in a high point does not leave by itself: it chokes the flow and makes noise.":
    "Luft an einem Hochpunkt geht nicht von selbst: sie drosselt den Durchfluss und macht Geräusche.",
  "What stays in a low point runs out when the tube is taken off.":
    "Was in einem Tiefpunkt bleibt, läuft heraus, wenn das Rohr abgenommen wird.",
  "What is longer than the printer's room cannot be printed in one go on it, however it is turned.":
    "Was länger ist als der Bauraum des Druckers, lässt sich darin nicht in einem Stück drucken, gleich wie es gedreht wird.",
  "A bore that lies flat needs support inside, which cannot be taken out again, or its ceiling sags into it.":
    "Eine Bohrung, die flach liegt, braucht innen Stützen, die nicht mehr herauszubekommen sind, oder ihre Decke sackt hinein.",
  "Where the bore sags towards the plate, or an end is shut by the plate, resin is trapped while it prints and each layer pulls a vacuum as it is lifted off: walls tear or bulge.":
    "Wo die Bohrung zur Platte hin durchhängt oder die Platte ein Ende verschließt, bleibt beim Drucken Harz gefangen, und jede Schicht zieht beim Abheben ein Vakuum: Wände reißen oder beulen.",
  "Where supports are broken off they leave scars, and an O-ring does not seal on a scar.":
    "Wo Stützen abgebrochen werden, bleiben Narben, und ein O-Ring dichtet nicht auf einer Narbe.",
  "Loose powder that is left in the bore goes into the coolant, and into the pump.":
    "Loses Pulver, das in der Bohrung bleibt, gelangt ins Kühlmittel und in die Pumpe.",
  // severities
  "Cannot be made, or must not be used as it is": "Nicht machbar oder so nicht zu verwenden",
  "Can be made; look before you pay for it": "Machbar; ansehen, bevor dafür bezahlt wird",
  "Good to know": "Gut zu wissen",
  "What is narrower than two of the printer's pixels, spots or nozzle widths may be drawn as one, or not at all: a wall then leaks, and a mark does not show.":
    "Was schmaler ist als zwei Pixel, Leuchtpunkte oder Düsenbreiten des Druckers, wird vielleicht als eines oder gar nicht gezeichnet: eine Wand ist dann undicht, und eine Marke ist nicht zu sehen.",
  "Where the bore lies flat, the top of it is printed over nothing from side to side. Wider than the printer bridges, it sags into the bore, and what hangs from it narrows the way or comes off into the coolant.":
    "Wo die Bohrung flach liegt, wird ihre Decke von Seite zu Seite über nichts gedruckt. Breiter, als der Drucker überbrückt, hängt sie in die Bohrung durch, und was herunterhängt, verengt den Weg oder löst sich ins Kühlmittel.",
};
