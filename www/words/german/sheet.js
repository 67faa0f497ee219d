// German for what stands in the files that people read: the sheet of a pack.

/** @type {Record<string, string>} */
export const SHEET = {
  "{0}, piece {1} of {2}": "{0}, Teilstück {1} von {2}",
  "Compensated by a measured coupon of {0} on {1}: {2}.":
    "Korrigiert nach einer gemessenen Passprobe ({0}; {1}): {2}.",
  "outer diameters come out {0} mm off": "Außendurchmesser weichen um {0} mm ab",
  "bores come out {0} mm off": "Innendurchmesser weichen um {0} mm ab",
  "lengths come out {0} % off": "Längen weichen um {0} % ab",
  "Printed coolant tubes: what to print, how to finish it, how to build it in":
    "Gedruckte Kühlmittelrohre: was zu drucken ist, wie es nachgearbeitet und wie es eingebaut wird",
  "Made by Tubewright from the design that lies beside this sheet. Its numbers are estimates from what the builder typed; whoever prints and builds carries the risk, and there is no warranty. The data sheets of material, fittings and coolant, licensed practice and local codes go first.":
    "Von Tubewright aus dem Entwurf gemacht, der neben diesem Blatt liegt. Die Zahlen sind Schätzungen aus den eingetippten Angaben; wer druckt und baut, trägt das Risiko, und es gibt keine Gewährleistung. Die Datenblätter von Material, Verschraubungen und Kühlmittel, Fachbetriebe und örtliche Vorschriften gehen vor.",
  "Lengths are millimetres. STL and 3MF of a tube hold the same solid. checksums.txt holds a SHA-256 of every other file; “sha256sum -c checksums.txt”, in the unpacked folder, tells whether one was damaged. The page that made this pack opens it again as the design.":
    "Längen sind Millimeter. STL und 3MF eines Rohrs enthalten denselben Körper. checksums.txt enthält die SHA-256 jeder anderen Datei; „sha256sum -c checksums.txt“, im entpackten Ordner, sagt, ob eine beschädigt wurde. Die Seite, die dieses Paket gemacht hat, öffnet es wieder als Entwurf.",
  "Do not print this yet": "Noch nicht drucken",
  "The design has faults that keep it from being made, or from being used:":
    "Der Entwurf hat Fehler, mit denen er nicht hergestellt oder nicht benutzt werden kann:",
  "Look at this before you pay for it": "Vor dem Bezahlen ansehen",
  "Left out, because it cannot be made": "Weggelassen, weil nicht herstellbar",
  "For the print service": "Für den Druckdienst",
  "What to print": "Was zu drucken ist",
  "File": "Datei",
  "Tube": "Rohr",
  "Plate": "Platte",
  "Box as it stands, mm": "Kasten, wie es steht, mm",
  "Material, cm³": "Material, cm³",
  "Mass, g": "Masse, g",
  "Triangles": "Dreiecke",
  "Deviation, mm": "Abweichung, mm",
  "Quantity": "Anzahl",
  "Material": "Material",
  "Printer class": "Druckerart",
  "Plate: the 3MF of that number in the folder “plates” holds the same solids side by side, each as it stands, 3 mm and more between their boxes (common practice, no source). Print the plates or the single files, not both.":
    "Platte: die 3MF mit dieser Nummer im Ordner „plates“ enthält dieselben Körper nebeneinander, jeden, wie er steht, mit 3 mm und mehr zwischen ihren Kästen (allgemein üblich, ohne Quelle). Die Platten oder die einzelnen Dateien drucken, nicht beides.",
  "Stance": "Lage",
  "Finish wished": "Gewünschte Ausführung",
  "Sealing bands: no supports and no scars here": "Dichtflächen: hier keine Stützen und keine Narben",
  "End": "Ende",
  "Band from the end face, mm": "Dichtfläche ab der Stirnfläche, mm",
  "Outer diameter, mm": "Außendurchmesser, mm",
  "The seal takes, mm": "Die Dichtung nimmt, mm",
  "Expected, mm": "Zu erwarten, mm",
  "The seal takes the diameters that squeeze its ring by 12 to 30 % (common practice, no source), whatever ring (ISO 3601-1, class B) and gland are within their tolerances. “Expected” is how far a print is taken to be off.":
    "Die Dichtung nimmt die Durchmesser, die ihren Ring um 12 bis 30 % verpressen (allgemein üblich, ohne Quelle), wie auch immer Ring (ISO 3601-1, Klasse B) und Nut innerhalb ihrer Toleranzen liegen. „Zu erwarten“ ist, um wie viel ein Druck vermutlich danebenliegt.",
  "What a service checks, asked of the STL files": "Was ein Dienst prüft, an den STL-Dateien gefragt",
  "Answer": "Antwort",
  "What was found": "Was gefunden wurde",
  "Limits come from: {0}.": "Die Grenzen stammen von: {0}.",
  "passed": "bestanden",
  "NOT passed": "NICHT bestanden",
  "Print each tube in one piece, standing as its file has it; ask before turning it.":
    "Jedes Rohr in einem Stück drucken, stehend wie in seiner Datei; vor dem Drehen fragen.",
  "Leave the bore and the sealing bands without supports. Rafts and supports may touch the skin anywhere else.":
    "Bohrung und Dichtflächen ohne Stützen lassen. Sonst dürfen Rafts und Stützen die Haut überall berühren.",
  "Both ends stay open and square to the axis. The rings scribed near the ends are wanted: do not fill or sand them away.":
    "Beide Enden bleiben offen und rechtwinklig zur Achse. Die eingeritzten Ringe nahe den Enden sind gewollt: nicht füllen oder wegschleifen.",
  "Bore clean and clear from end to end: no uncured resin, no loose powder, no supports, no threads of filament.":
    "Bohrung von Ende zu Ende sauber und frei: kein nicht ausgehärtetes Harz, kein loses Pulver, keine Stützen, keine Filamentfäden.",
  "Sealing bands: smooth, no layer steps to feel, Ra 1.6 µm; where that is not offered, leave the sanding to the builder and take nothing off the diameter.":
    "Dichtflächen: glatt, keine fühlbaren Schichtstufen, Ra 1,6 µm; wo das nicht angeboten wird, das Schleifen dem Auftraggeber überlassen und vom Durchmesser nichts abnehmen.",
  "Spigots and sockets, where the pieces of one tube are joined: no supports, no scars and nothing left inside. The rings beside them number the joints.":
    "Zapfen und Muffen, wo die Teilstücke eines Rohrs verbunden werden: keine Stützen, keine Narben, und nichts darf darin bleiben. Die Ringe daneben zählen die Verbindungen.",
  "Joining the pieces": "Die Teilstücke verbinden",
  "Which spigot goes into which socket": "Welcher Zapfen in welche Muffe kommt",
  "Spigot at the end of": "Zapfen am Ende von",
  "Socket at the start of": "Muffe am Anfang von",
  "Marks on both sides": "Marken auf beiden Seiten",
  "Goes in by, mm": "Einstecktiefe, mm",
  "Glue gap, mm": "Klebespalt, mm",
  "Wear nitrile gloves and eye protection and air the room: adhesives irritate, uncured epoxy and acrylate can cause a lasting skin allergy, and vapours burn. The adhesive's own data sheet goes first.":
    "Nitrilhandschuhe und Schutzbrille tragen und den Raum lüften: Klebstoffe reizen, nicht ausgehärtetes Epoxid und Acrylat kann eine bleibende Hautallergie auslösen, und Dämpfe brennen. Das Datenblatt des Klebstoffs geht vor.",
  "Take an adhesive that its data sheet gives for this plastic, for warm water and for your coolant, and that fills the gap. Bond and prove a short sample first, soaked warm in the coolant for three days.":
    "Einen Klebstoff nehmen, den sein Datenblatt für diesen Kunststoff, für warmes Wasser und für das eigene Kühlmittel nennt und der den Spalt füllt. Zuerst ein kurzes Probestück kleben, drei Tage warm in das Kühlmittel legen und prüfen.",
  "A bonded joint is no stronger than its preparation. Prove every joined tube outside the machine, filled with water, before it is used.":
    "Eine Klebverbindung ist nicht stärker als ihre Vorbereitung. Jedes verbundene Rohr vor Gebrauch außerhalb des Rechners prüfen, mit Wasser gefüllt.",
  "Cure, clean and dry the pieces fully. Put them together dry, in the order of the rings: spigot and socket with the same marks go together, in one position only, and the bore runs on smoothly. Look through it.":
    "Die Teilstücke vollständig aushärten, reinigen und trocknen. Sie trocken zusammenstecken, in der Reihenfolge der Ringe: Zapfen und Muffe mit denselben Marken gehören zusammen, nur in einer Stellung, und die Bohrung läuft glatt durch. Hindurchsehen.",
  "Roughen both faces with fine paper, wet, and wipe them clean as the adhesive's data sheet says.":
    "Beide Flächen nass mit feinem Papier aufrauen und abwischen, wie das Datenblatt des Klebstoffs es sagt.",
  "Put adhesive thinly round the spigot, from its root to the ring near its tip and no further: what the tip wipes along would get into the bore.":
    "Klebstoff dünn rings auf den Zapfen geben, von seiner Wurzel bis zum Ring nahe der Spitze und nicht weiter: was die Spitze vor sich herschiebt, käme in die Bohrung.",
  "Push the spigot straight home, all the way in. Wipe off what comes out at the mouth, and draw a soft brush through the bore.":
    "Den Zapfen gerade bis zum Anschlag hineinschieben. Abwischen, was an der Mündung austritt, und eine weiche Bürste durch die Bohrung ziehen.",
  "Hold it still and let it cure for as long and as warm as the adhesive's data sheet says, before anything loads it.":
    "Ruhig halten und so lange und so warm aushärten lassen, wie das Datenblatt des Klebstoffs es sagt, bevor etwas die Verbindung belastet.",
  "Rinse the bore, look through it against the light, and leak-test the joined tube as below before it is built in.":
    "Die Bohrung spülen, gegen das Licht hindurchsehen und das verbundene Rohr wie unten auf Dichtheit prüfen, bevor es eingebaut wird.",
  "Quantities": "Mengen",
  "Of each tube": "Von jedem Rohr",
  "Supports, cm³": "Stützen, cm³",
  "Cost of the material": "Kosten des Materials",
  "Coolant inside, mL": "Kühlmittel darin, mL",
  "Layers": "Schichten",
  "Print time, hours": "Druckzeit, Stunden",
  "Print service": "Druckdienst",
  "All tubes": "Alle Rohre",
  "not known": "nicht bekannt",
  "Material and mass are those of the tubes alone, before supports, waste and fit coupons. Supports are a rough band: the skin that needs them times its mean height above the plate, filled to 5 to 20 % with resin, 10 to 30 % with filament (common practice, no source); what a tube stands on is not in it, and powder needs none. The cost is in the money that the design states its price per litre in: from the tubes alone to the most supports and a fifth of waste on top (common practice, no source). Layers are those of the tube's own height. The time is layers times the printer's seconds a layer, without warming up and clearing; from all tubes side by side on one plate, where they fit, to one after another.":
    "Material und Masse sind die der Rohre allein, vor Stützen, Verschnitt und Passproben. Stützen sind eine grobe Spanne: die Haut, die sie braucht, mal ihrer mittleren Höhe über der Platte, zu 5 bis 20 % gefüllt bei Harz, zu 10 bis 30 % bei Filament (allgemein üblich, ohne Quelle); worauf ein Rohr steht, ist nicht darin, und Pulver braucht keine. Die Kosten stehen in dem Geld, in dem der Entwurf den Preis je Liter angibt: von den Rohren allein bis zu den meisten Stützen und einem Fünftel Verschnitt dazu (allgemein üblich, ohne Quelle). Schichten sind die der Höhe des Rohrs selbst. Die Zeit ist Schichten mal Sekunden des Druckers je Schicht, ohne Aufwärmen und Abräumen; von allen Rohren nebeneinander auf einer Platte, wo sie passen, bis zu einem nach dem anderen.",
  "The print service's price is what the design states of it: material by the cubic centimetre and a set-up for each piece, and for all of them the least order where that is more. Supports and waste are the service's own; finishing, tax and shipping come on top, and its offer is what counts.":
    "Der Preis des Druckdienstes ist, was der Entwurf davon angibt: Material je Kubikzentimeter und ein Einrichten für jedes Teilstück, und für alle zusammen der Mindestauftrag, wo der mehr ist. Stützen und Verschnitt sind Sache des Dienstes; Nacharbeit, Steuer und Versand kommen dazu, und es gilt sein Angebot.",
  "For the builder": "Für den Einbau",
  "First the fit coupon": "Zuerst die Passprobe",
  "Print the fit coupon on the same printer, in the same material and finish, and try its ends in the fitting before anything else. Count its rings, measure it, type the readings in on the page, and make the pack again if they ask for it.":
    "Die Passprobe auf demselben Drucker, in demselben Material und derselben Ausführung drucken und ihre Enden vor allem anderen in der Verschraubung probieren. Ihre Ringe zählen, sie messen, die Messwerte auf der Seite eintippen und das Paket neu machen, wenn sie es verlangen.",
  "Cleaning, curing and sanding": "Reinigen, Aushärten und Schleifen",
  "Order of assembly": "Reihenfolge des Einbaus",
  "One tube: there is no order to keep.": "Ein Rohr: keine Reihenfolge zu beachten.",
  "Seating": "Einsetzen",
  "How deep each end goes": "Wie tief jedes Ende hineingeht",
  "Fitting": "Verschraubung",
  "Cut off first, mm": "Zuerst abschneiden, mm",
  "Seating mark": "Sitzmarke",
  "vanishes under the collar when the tube is home": "verschwindet unter dem Bund, wenn das Rohr ganz sitzt",
  "none: mark the depth with a pencil": "keine: die Tiefe mit einem Bleistift anzeichnen",
  "Cut or sand the trim off square, within 1°, and break the edges again so that no ring is cut.":
    "Die Zugabe rechtwinklig abschneiden oder abschleifen, auf 1° genau, und die Kanten wieder brechen, damit kein Ring verletzt wird.",
  "Wet the ring and the band with coolant. Push the tube straight in, in line with the fitting, turning it a little; never force it, and never pull a tube askew into place.":
    "Ring und Dichtfläche mit Kühlmittel benetzen. Das Rohr gerade hineinschieben, in der Achse der Verschraubung, und dabei ein wenig drehen; nie mit Gewalt, und nie ein Rohr schief an seinen Platz ziehen.",
  "It is home when its end stands on the stop and the seating mark has vanished under the collar. Then turn the collar tight by hand.":
    "Es sitzt, wenn sein Ende am Anschlag steht und die Sitzmarke unter dem Bund verschwunden ist. Dann den Bund von Hand festdrehen.",
  "Leak test and first fill": "Dichtheitsprüfung und Erstbefüllung",
  "Common practice, no source. Local codes, the data sheets of your parts and licensed practice go first.":
    "Allgemein üblich, ohne Quelle. Örtliche Vorschriften, die Datenblätter der eigenen Bauteile und Fachbetriebe gehen vor.",
  "Before you print and fill": "Vor dem Drucken und Befüllen",
  "{0}: order and build sheet": "{0}: Begleitblatt für Druck und Einbau",
  "{0} Do not correct them again.": "{0} Nicht noch einmal korrigieren.",
  "{0} is not in this pack. {1}": "{0} ist nicht in diesem Paket. {1}",
  "and {0} more: open the design on the page.": "und {0} weitere: den Entwurf auf der Seite öffnen.",
  "{0}.stl or .3mf": "{0}.stl oder .3mf",
  "plate:none": "keine",
  "{0}: it fits a build volume of {1} mm, less its margin, in no stance; its file is in the builder's own axes. Take a larger printer, or ask for it in two pieces.":
    "{0}: es passt in keiner Lage in einen Bauraum von {1} mm abzüglich Rand; seine Datei steht in den eigenen Achsen des Auftraggebers. Einen größeren Drucker nehmen oder nach zwei Teilstücken fragen.",
  "{0}: stands as the builder chose, {1}.": "{0}: steht, wie vom Auftraggeber gewählt, {1}.",
  "{0}: stands as was found best, {1}.": "{0}: steht in der besten gefundenen Lage, {1}.",
  "with its lowest point on the plate": "mit dem tiefsten Punkt auf der Platte",
  "with its lowest point {0} mm above the plate": "mit dem tiefsten Punkt {0} mm über der Platte",
  "About {0} mm² of its outer skin wants support.": "Etwa {0} mm² seiner Außenhaut brauchen Stützen.",
  "Standing so, {0} mm of the sealing band at {1} overhang: turn it rather than support them, or ask.":
    "So stehend hängen {0} mm der Dichtfläche an {1} über: es lieber drehen, als sie zu stützen, oder fragen.",
  "Standing so, {0} mm of the spigot overhang: turn it rather than support them, or ask.":
    "So stehend hängen {0} mm des Zapfens über: es lieber drehen, als sie zu stützen, oder fragen.",
  "start, at {0}": "Anfang, an {0}",
  "end, at {0}": "Ende, an {0}",
  "0 to {0}": "0 bis {0}",
  "0 to {0}, {1} of them to be cut off": "0 bis {0}, davon {1} abzuschneiden",
  "no size for sure: ring and gland alone are off by more than the seal takes":
    "kein Maß sicher: Ring und Nut allein liegen schon um mehr daneben, als die Dichtung nimmt",
  "{0} to {1}": "{0} bis {1}",
  "from {0}": "ab {0}",
  "± {0} (measured on a coupon)": "± {0} (an einer Passprobe gemessen)",
  "± {0} (the printer's figures)": "± {0} (Werte des Druckers)",
  "± {0} (usual)": "± {0} (üblich)",
  "Coolant for the first fill: about {0} mL in the tubes of this pack and the loop's other parts as the design states them. Have some more at hand.":
    "Kühlmittel für die Erstbefüllung: etwa {0} mL in den Rohren dieses Pakets und den anderen Bauteilen des Kreislaufs, wie der Entwurf sie angibt. Etwas mehr bereithalten.",
  "{0} Care: {1}": "{0} Achtung: {1}",
  "{0}: for {1}": "{0}: für {1}",
  "No coupon for {0}: {1}": "Keine Passprobe für {0}: {1}",
  "nothing": "nichts",
  "1 wide ring": "1 breiter Ring",
  "{0} wide rings": "{0} breite Ringe",
  "1 narrow ring": "1 schmaler Ring",
  "{0} narrow rings": "{0} schmale Ringe",
  "{0} and {1}": "{0} und {1}",
  "Sand the sealing bands wet, along the circumference and never along the tube, to Ra 1.6 µm (3.2 at the very most): scratches along the tube are paths for coolant. Measure the diameter at three places round each band while you go.":
    "Die Dichtflächen nass schleifen, rings um das Rohr und nie längs, auf Ra 1,6 µm (höchstens 3,2): Riefen längs des Rohrs sind Wege für Kühlmittel. Dabei den Durchmesser an drei Stellen rings um jede Dichtfläche messen.",
  "Rinse the bore with clean water until nothing more comes, look through it against the light, and let it dry.":
    "Die Bohrung mit klarem Wasser spülen, bis nichts mehr kommt, gegen das Licht hindurchsehen und trocknen lassen.",
  "Prove each tube outside the machine: filled with water and no air, at 1 bar for 30 minutes at room temperature, then warm, with eye protection. A tube that weeps, cracks or whitens is not built in.":
    "Jedes Rohr außerhalb des Rechners prüfen: mit Wasser und ohne Luft gefüllt, bei 1 bar 30 Minuten lang bei Raumtemperatur, dann warm, mit Schutzbrille. Ein Rohr, das schwitzt, reißt oder weiß anläuft, wird nicht eingebaut.",
  "Wear nitrile gloves and eye protection and air the room: uncured resin can cause a lasting skin allergy, and washing alcohol burns. No flame, no spark. Wash skin with soap and water, not solvent.":
    "Nitrilhandschuhe und Schutzbrille tragen und den Raum lüften: nicht ausgehärtetes Harz kann eine bleibende Hautallergie auslösen, und Waschalkohol brennt. Keine Flamme, kein Funke. Haut mit Wasser und Seife waschen, nicht mit Lösemittel.",
  "Let resin drain out of the bore, both ends open. Wash outside and inside as the resin's data sheet says, and flush the bore with fresh solvent until it comes out clear.":
    "Harz aus der Bohrung ablaufen lassen, beide Enden offen. Außen und innen waschen, wie das Datenblatt des Harzes es sagt, und die Bohrung mit frischem Lösemittel spülen, bis es klar herauskommt.",
  "Dry it fully, in the bore too, before it is cured.": "Vollständig trocknen, auch in der Bohrung, bevor ausgehärtet wird.",
  "Cure outside and inside as the resin's data sheet says (usual: 405 nm, 10 to 60 minutes at 45 to 60 °C), turned about, with light let in at both ends of the bore. Do not look into the lamp.":
    "Außen und innen aushärten, wie das Datenblatt des Harzes es sagt (üblich: 405 nm, 10 bis 60 Minuten bei 45 bis 60 °C), dabei wenden und an beiden Enden Licht in die Bohrung lassen. Nicht in die Lampe sehen.",
  "Take supports off and sand their scars, wet, so that no dust is breathed.":
    "Stützen entfernen und ihre Narben nass schleifen, damit kein Staub eingeatmet wird.",
  "Get the loose powder out of the bore, with a brush drawn through and then water. Wear a dust mask and eye protection.":
    "Loses Pulver aus der Bohrung holen, mit einer durchgezogenen Bürste und dann mit Wasser. Staubmaske und Schutzbrille tragen.",
  "Sintered powder may weep through its wall: have it smoothed by vapour or seal it where the material's data sheet asks for it. Smoothing takes something off the diameter: measure the bands afterwards.":
    "Gesintertes Pulver kann durch die Wand schwitzen: mit Dampf glätten lassen oder versiegeln, wo das Datenblatt des Materials es verlangt. Glätten nimmt etwas vom Durchmesser: die Dichtflächen danach messen.",
  "Take supports off, and draw a brush through the bore so that no thread of filament stays in it.":
    "Stützen entfernen und eine Bürste durch die Bohrung ziehen, damit kein Filamentfaden darin bleibt.",
  "A print from filament is porous: seal it, inside if you can, with a coating that stands warm coolant, as its data sheet says (Mireles et al., SFF Symposium 2011, held pressure only with sealed prints). Gloves, and air the room.":
    "Ein Druck aus Filament ist porös: ihn versiegeln, wenn möglich innen, mit einer Beschichtung, die warmes Kühlmittel aushält, wie ihr Datenblatt es sagt (Mireles et al., SFF Symposium 2011, hielten Druck nur mit versiegelten Drucken). Handschuhe, und den Raum lüften.",
  "Keep the coating off the sealing bands, or sand them to size once it is hard.":
    "Die Beschichtung von den Dichtflächen fernhalten oder sie auf Maß schleifen, sobald sie hart ist.",
  "Clean and finish it as the material's data sheet says, inside and outside, with the protection it asks for.":
    "Reinigen und nacharbeiten, wie das Datenblatt des Materials es sagt, innen und außen, mit dem Schutz, den es verlangt.",
};
