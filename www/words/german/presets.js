// German for what is shipped.

/** @type {Record<string, string>} */
export const PRESETS = {
  // fittings
  "Straight, 10 mm tube": "Gerade, Rohr 10 mm",
  "common practice, no source: measure yours. Height, socket and collar are middling figures from memory; lead is half the tube or 5 mm; the gland gives a 2.0 mm ring 20 % of squeeze, its width is a groove table's":
    "allgemein üblich, ohne Quelle: die eigene messen. Höhe, Einstecktiefe und Bund sind mittlere Werte aus dem Gedächtnis; der Auslauf ist das halbe Rohr oder 5 mm; die Nut gibt einem Ring von 2,0 mm 20 % Verpressung, ihre Breite ist die einer Nuttabelle",
  "Straight, 12 mm tube": "Gerade, Rohr 12 mm",
  "Straight, 1/2 in (12.7 mm) tube": "Gerade, Rohr 1/2 Zoll (12,7 mm)",
  "Straight, 14 mm tube": "Gerade, Rohr 14 mm",
  "Straight, 16 mm tube": "Gerade, Rohr 16 mm",
  "Elbow 90°, 10 mm tube": "Winkel 90°, Rohr 10 mm",
  "common practice, no source: measure yours. Rise and reach leave the socket clear of the turn":
    "allgemein üblich, ohne Quelle: die eigene messen. Steigmaß und Ausladung lassen die Aufnahme frei von der Biegung",
  "Elbow 90°, 12 mm tube": "Winkel 90°, Rohr 12 mm",
  "Elbow 90°, 1/2 in (12.7 mm) tube": "Winkel 90°, Rohr 1/2 Zoll (12,7 mm)",
  "Elbow 90°, 14 mm tube": "Winkel 90°, Rohr 14 mm",
  "Elbow 90°, 16 mm tube": "Winkel 90°, Rohr 16 mm",
  // tubes
  "10 × 8 mm, wall 1 mm": "10 × 8 mm, Wand 1 mm",
  "12 × 8 mm, wall 2 mm": "12 × 8 mm, Wand 2 mm",
  "12 × 9 mm, wall 1.5 mm": "12 × 9 mm, Wand 1,5 mm",
  "12 × 10 mm, wall 1 mm": "12 × 10 mm, Wand 1 mm",
  "1/2 × 3/8 in, 12.7 × 9.525 mm, wall 1.59 mm": "1/2 × 3/8 Zoll, 12,7 × 9,525 mm, Wand 1,59 mm",
  "one trade source; 1/2 by 3/8 in": "eine Handelsquelle; 1/2 mal 3/8 Zoll",
  "14 × 10 mm, wall 2 mm": "14 × 10 mm, Wand 2 mm",
  "one trade source": "eine Handelsquelle",
  "14 × 11 mm, wall 1.5 mm": "14 × 11 mm, Wand 1,5 mm",
  "14 × 12 mm, wall 1 mm": "14 × 12 mm, Wand 1 mm",
  "5/8 × 1/2 in, 15.875 × 12.7 mm, wall 1.59 mm": "5/8 × 1/2 Zoll, 15,875 × 12,7 mm, Wand 1,59 mm",
  "from memory, unverified; 5/8 by 1/2 in": "aus dem Gedächtnis, ungeprüft; 5/8 mal 1/2 Zoll",
  "16 × 12 mm, wall 2 mm": "16 × 12 mm, Wand 2 mm",
  "16 × 13 mm, wall 1.5 mm": "16 × 13 mm, Wand 1,5 mm",
  // materials
  "tough resin": "zähes Harz",
  "resin": "Harz",
  "Uncured resin can cause a lasting skin allergy: gloves, and cure and flush the bore. Glycol, alcohol and dye can craze it: soak a test piece for three days first.":
    "Nicht ausgehärtetes Harz kann eine bleibende Hautallergie auslösen: Handschuhe, aushärten und die Bohrung spülen. Glykol, Alkohol und Farbstoff können Haarrisse machen: zuerst ein Probestück drei Tage einlegen.",
  "Density 1.05 to 1.20, heat deflection at 0.45 MPa 43 to 60, strength 32 to 60, elongation 20 to 50: one maker's data sheet for the class, lowest taken. Heat deflection at 1.8 MPa 35 to 50: from memory, unverified; across layers 0.8: Appl. Mech. 2025, 6(3), 71 (0.80 to 0.88). Expansion: one resin sheet, 117 to 145. Water: Materials 2024, 17(23), 5953, from 3.3. Modulus, price: from memory, unverified. Tight from 1 mm, roughness: common practice, no source. Put in the sheet of the resin you bought.":
    "Dichte 1,05 bis 1,20, Wärmeformbeständigkeit bei 0,45 MPa 43 bis 60, Festigkeit 32 bis 60, Dehnung 20 bis 50: Datenblatt eines Herstellers für die Klasse, das Niedrigste genommen. Wärmeformbeständigkeit bei 1,8 MPa 35 bis 50: aus dem Gedächtnis, ungeprüft; quer zu den Schichten 0,8: Appl. Mech. 2025, 6(3), 71 (0,80 bis 0,88). Ausdehnung: ein Harzblatt, 117 bis 145. Wasser: Materials 2024, 17(23), 5953, ab 3,3. Modul, Preis: aus dem Gedächtnis, ungeprüft. Dicht ab 1 mm, Rauheit: allgemein üblich, ohne Quelle. Das Blatt des gekauften Harzes eintragen.",
  "standard resin": "Standardharz",
  "Density 1.10 to 1.20, heat deflection 45 to 75 and 40 to 60, strength 38 to 65, elongation 3 to 12: from memory, unverified, lowest taken; across layers 0.8: Appl. Mech. 2025, 6(3), 71 (0.80 to 0.88). Expansion: one resin sheet, 117 to 145. Water: Materials 2024, 17(23), 5953, from 3.3. Modulus, price: from memory, unverified. Tight from 1 mm, roughness: common practice, no source. Put in the sheet of the resin you bought.":
    "Dichte 1,10 bis 1,20, Wärmeformbeständigkeit 45 bis 75 und 40 bis 60, Festigkeit 38 bis 65, Dehnung 3 bis 12: aus dem Gedächtnis, ungeprüft, das Niedrigste genommen; quer zu den Schichten 0,8: Appl. Mech. 2025, 6(3), 71 (0,80 bis 0,88). Ausdehnung: ein Harzblatt, 117 bis 145. Wasser: Materials 2024, 17(23), 5953, ab 3,3. Modul, Preis: aus dem Gedächtnis, ungeprüft. Dicht ab 1 mm, Rauheit: allgemein üblich, ohne Quelle. Das Blatt des gekauften Harzes eintragen.",
  "clear resin": "klares Harz",
  "high-temperature resin": "Hochtemperaturharz",
  "Uncured resin can cause a lasting skin allergy: gloves, and cure and flush the bore. Glycol, alcohol and dye can craze it: soak a test piece for three days first. It is brittle: never clamp it askew.":
    "Nicht ausgehärtetes Harz kann eine bleibende Hautallergie auslösen: Handschuhe, aushärten und die Bohrung spülen. Glykol, Alkohol und Farbstoff können Haarrisse machen: zuerst ein Probestück drei Tage einlegen. Es ist spröde: nie schief klemmen.",
  "Density 1.10 to 1.25: one maker's data sheet for the class. Heat deflection at 0.45 MPa 120 to 240 (238 on one sheet), at 1.8 MPa 80 to 140, strength 45 to 75, elongation 1.5 to 4: from memory, unverified, lowest taken; across layers 0.8: Appl. Mech. 2025, 6(3), 71 (0.80 to 0.88). Expansion: one resin sheet, 117 to 145. Water: Materials 2024, 17(23), 5953, from 3.3. Modulus, price: from memory, unverified. Tight from 1 mm, roughness: common practice, no source. Put in the sheet of the resin you bought.":
    "Dichte 1,10 bis 1,25: Datenblatt eines Herstellers für die Klasse. Wärmeformbeständigkeit bei 0,45 MPa 120 bis 240 (238 auf einem Blatt), bei 1,8 MPa 80 bis 140, Festigkeit 45 bis 75, Dehnung 1,5 bis 4: aus dem Gedächtnis, ungeprüft, das Niedrigste genommen; quer zu den Schichten 0,8: Appl. Mech. 2025, 6(3), 71 (0,80 bis 0,88). Ausdehnung: ein Harzblatt, 117 bis 145. Wasser: Materials 2024, 17(23), 5953, ab 3,3. Modul, Preis: aus dem Gedächtnis, ungeprüft. Dicht ab 1 mm, Rauheit: allgemein üblich, ohne Quelle. Das Blatt des gekauften Harzes eintragen.",
  "PA12, laser-sintered": "PA12, lasergesintert",
  "powder": "Pulver",
  "Sintered powder weeps through its wall unless it is smoothed by vapour or sealed: smoothing takes 0.05 to 0.1 mm off. Flush loose powder out of the bore.":
    "Gesintertes Pulver schwitzt durch seine Wand, wenn sie nicht mit Dampf geglättet oder versiegelt ist: Glätten nimmt 0,05 bis 0,1 mm weg. Loses Pulver aus der Bohrung spülen.",
  "Density 0.88 to 0.96, strength 44 to 52, elongation 8 to 25, glass transition 41 to 55: material data pages. Heat deflection: from memory, unverified, sources conflict (95 to 154, and 70 to 86). Porosity: Polymers 2023, 15, 4446. Water 1 to 1.5. Roughness 20 to 60, across layers: common practice, no source. Modulus, expansion, price of a service: from memory, unverified.":
    "Dichte 0,88 bis 0,96, Festigkeit 44 bis 52, Dehnung 8 bis 25, Glasübergang 41 bis 55: Werkstoffdatenseiten. Wärmeformbeständigkeit: aus dem Gedächtnis, ungeprüft, Quellen widersprechen sich (95 bis 154, und 70 bis 86). Porosität: Polymers 2023, 15, 4446. Wasser 1 bis 1,5. Rauheit 20 bis 60, quer zu den Schichten: allgemein üblich, ohne Quelle. Modul, Ausdehnung, Preis eines Dienstes: aus dem Gedächtnis, ungeprüft.",
  "PA12, jet-fused": "PA12, im Pulverbett verschmolzen",
  "Order it for water and with 2 mm of wall; flush loose powder out of the bore.":
    "Für Wasser und mit 2 mm Wand bestellen; loses Pulver aus der Bohrung spülen.",
  "Density, heat deflection, strength, elongation 12 to 20: material fact sheet. Glass transition 41 to 55: material data pages. Tight from 2 mm: Materials 2018, 11(8), 1472 and a service's guide. Roughness, across layers: common practice, no source. Modulus, expansion, price of a service: from memory, unverified.":
    "Dichte, Wärmeformbeständigkeit, Festigkeit, Dehnung 12 bis 20: Werkstoffblatt. Glasübergang 41 bis 55: Werkstoffdatenseiten. Dicht ab 2 mm: Materials 2018, 11(8), 1472 und der Leitfaden eines Dienstes. Rauheit, quer zu den Schichten: allgemein üblich, ohne Quelle. Modul, Ausdehnung, Preis eines Dienstes: aus dem Gedächtnis, ungeprüft.",
  "PETG": "PETG",
  "filament": "Filament",
  "Printed from filament it is porous: Mireles et al., SFF Symposium 2011, held 138 kPa only when sealed. Seal it and test it.":
    "Aus Filament gedruckt ist es porös: Mireles et al., SFF Symposium 2011, hielt 138 kPa nur versiegelt. Versiegeln und prüfen.",
  "Density 1.25 to 1.29, glass transition 75 to 88, strength 44 to 56 along and 25 to 38 across layers, elongation: three material data pages, lowest taken. Heat deflection, water: from memory, unverified. Across layers, roughness: common practice, no source. Modulus, expansion, price: from memory, unverified.":
    "Dichte 1,25 bis 1,29, Glasübergang 75 bis 88, Festigkeit 44 bis 56 längs und 25 bis 38 quer zu den Schichten, Dehnung: drei Werkstoffdatenseiten, das Niedrigste genommen. Wärmeformbeständigkeit, Wasser: aus dem Gedächtnis, ungeprüft. Quer zu den Schichten, Rauheit: allgemein üblich, ohne Quelle. Modul, Ausdehnung, Preis: aus dem Gedächtnis, ungeprüft.",
  "ABS": "ABS",
  "Density 1.02 to 1.08, glass transition 88 to 120, heat deflection of printed parts, strength 30 to 50, expansion 81 to 94, water 0.7 to 1.0: commercial materials database and a service's table, lowest taken. Elongation: from memory, unverified. Across layers, roughness: common practice, no source. Modulus, expansion, price: from memory, unverified.":
    "Dichte 1,02 bis 1,08, Glasübergang 88 bis 120, Wärmeformbeständigkeit gedruckter Teile, Festigkeit 30 bis 50, Ausdehnung 81 bis 94, Wasser 0,7 bis 1,0: kommerzielle Werkstoffdatenbank und die Tabelle eines Dienstes, das Niedrigste genommen. Dehnung: aus dem Gedächtnis, ungeprüft. Quer zu den Schichten, Rauheit: allgemein üblich, ohne Quelle. Modul, Ausdehnung, Preis: aus dem Gedächtnis, ungeprüft.",
  "ASA": "ASA",
  "All figures from memory, unverified, lowest taken. Across layers, roughness: common practice, no source. Modulus, expansion, price: from memory, unverified.":
    "Alle Werte aus dem Gedächtnis, ungeprüft, das Niedrigste genommen. Quer zu den Schichten, Rauheit: allgemein üblich, ohne Quelle. Modul, Ausdehnung, Preis: aus dem Gedächtnis, ungeprüft.",
  "PC": "PC",
  "Printed from filament it is porous: Mireles et al., SFF Symposium 2011, held 138 kPa only when sealed. Seal it and test it. Warm water attacks it slowly: one data sheet allows 60 °C at most.":
    "Aus Filament gedruckt ist es porös: Mireles et al., SFF Symposium 2011, hielt 138 kPa nur versiegelt. Versiegeln und prüfen. Warmes Wasser greift es langsam an: ein Datenblatt erlaubt höchstens 60 °C.",
  "Density 1.20 to 1.22, glass transition, heat deflection, strength 55 to 75, expansion 65 to 70, water: four material data sheets, lowest taken. Elongation of printed parts: from memory, unverified. Across layers, roughness: common practice, no source. Modulus, expansion, price: from memory, unverified.":
    "Dichte 1,20 bis 1,22, Glasübergang, Wärmeformbeständigkeit, Festigkeit 55 bis 75, Ausdehnung 65 bis 70, Wasser: vier Werkstoffdatenblätter, das Niedrigste genommen. Dehnung gedruckter Teile: aus dem Gedächtnis, ungeprüft. Quer zu den Schichten, Rauheit: allgemein üblich, ohne Quelle. Modul, Ausdehnung, Preis: aus dem Gedächtnis, ungeprüft.",
  "PLA": "PLA",
  "Printed from filament it is porous: Mireles et al., SFF Symposium 2011, held 138 kPa only when sealed. Seal it and test it. It softens at the temperature of a stopped loop.":
    "Aus Filament gedruckt ist es porös: Mireles et al., SFF Symposium 2011, hielt 138 kPa nur versiegelt. Versiegeln und prüfen. Es wird bei der Temperatur eines stehenden Kreislaufs weich.",
  "Density 1.24 to 1.26, heat deflection 48 to 52 as printed, strength 48 to 69, elongation 0.5 to 9, water 0.12 to 0.46: generic resin database, lowest taken. Glass transition 55 to 60: one source. Price 20 to 40 a kilogram: two pages. Across layers, roughness: common practice, no source. Modulus, expansion, price: from memory, unverified.":
    "Dichte 1,24 bis 1,26, Wärmeformbeständigkeit 48 bis 52 wie gedruckt, Festigkeit 48 bis 69, Dehnung 0,5 bis 9, Wasser 0,12 bis 0,46: allgemeine Kunststoffdatenbank, das Niedrigste genommen. Glasübergang 55 bis 60: eine Quelle. Preis 20 bis 40 je Kilogramm: zwei Seiten. Quer zu den Schichten, Rauheit: allgemein üblich, ohne Quelle. Modul, Ausdehnung, Preis: aus dem Gedächtnis, ungeprüft.",
  // printers
  "small resin": "kleiner Harzdrucker",
  "volume: from memory, unverified; wall: print services' recommended least wall; tolerance: service pages, 0.1 to 0.15; margin: common practice, no source; layer and pixel: service and course pages; overhang and bridge: service pages; bore: design pages ask for support in level holes over 5 mm, 30 degrees is common practice, no source; time a layer: exposure from a study (Appl. Mech. 2025 6(3) 71), lift from memory, unverified; triangles and file: services' pages":
    "Bauraum: aus dem Gedächtnis, ungeprüft; Wand: empfohlene kleinste Wand von Druckdiensten; Toleranz: Seiten von Diensten, 0,1 bis 0,15; Rand: allgemein üblich, ohne Quelle; Schicht und Pixel: Seiten von Diensten und Kursen; Überhang und Brücke: Seiten von Diensten; Bohrung: Konstruktionsseiten verlangen Stützen in waagerechten Löchern über 5 mm, 30 Grad ist allgemein üblich, ohne Quelle; Zeit je Schicht: Belichtung aus einer Studie (Appl. Mech. 2025 6(3) 71), Abheben aus dem Gedächtnis, ungeprüft; Dreiecke und Datei: Seiten von Diensten",
  "medium resin": "mittlerer Harzdrucker",
  "large resin": "großer Harzdrucker",
  "volume: print services' pages, the smaller of the usual; wall: print services' recommended least wall; tolerance: a service's page, below 100 mm; margin: common practice, no source; layer: service pages; nozzle: from memory, unverified; overhang: service pages; bore: its ceiling is an overhang, so the same; triangles and file: services' pages":
    "Bauraum: Seiten von Druckdiensten, das kleinere der üblichen Maße; Wand: empfohlene kleinste Wand von Druckdiensten; Toleranz: Seite eines Dienstes, unter 100 mm; Rand: allgemein üblich, ohne Quelle; Schicht: Seiten von Diensten; Düse: aus dem Gedächtnis, ungeprüft; Überhang: Seiten von Diensten; Bohrung: ihre Decke ist ein Überhang, also ebenso; Dreiecke und Datei: Seiten von Diensten",
  "laser-sintering powder": "Pulverdrucker mit Laser",
  "volume: print services' pages; wall: print services' recommended least wall; tolerance: two service pages; margin: common practice, no source; layer: service pages; triangles and file: services' pages":
    "Bauraum: Seiten von Druckdiensten; Wand: empfohlene kleinste Wand von Druckdiensten; Toleranz: zwei Seiten von Diensten; Rand: allgemein üblich, ohne Quelle; Schicht: Seiten von Diensten; Dreiecke und Datei: Seiten von Diensten",
  "jet-fusion powder": "Pulverdrucker mit Verschmelzung",
  "volume: print services' pages; wall: print services' recommended least wall; tolerance: a service's page; margin: common practice, no source; layer: service pages; triangles and file: services' pages":
    "Bauraum: Seiten von Druckdiensten; Wand: empfohlene kleinste Wand von Druckdiensten; Toleranz: Seite eines Dienstes; Rand: allgemein üblich, ohne Quelle; Schicht: Seiten von Diensten; Dreiecke und Datei: Seiten von Diensten",
  // coolants
  "water": "Wasser",
  "IAPWS R6-95 at 40 °C and 101.325 kPa": "IAPWS R6-95 bei 40 °C und 101,325 kPa",
  "water with ethylene glycol, 25 %": "Wasser mit Ethylenglykol, 25 %",
  "ethylene glycol": "Ethylenglykol",
  "Melinder, Properties of Secondary Working Fluids, IIR 2010, at 40 °C":
    "Melinder, Properties of Secondary Working Fluids, IIR 2010, bei 40 °C",
  "water with propylene glycol, 30 %": "Wasser mit Propylenglykol, 30 %",
  "propylene glycol": "Propylenglykol",
  // pumps
  "usual pump": "übliche Pumpe",
  "Shut-off head 3 to 5 m, open flow 800 to 1500 L/h: from memory, unverified; use the curve of your own pump":
    "Nullförderhöhe 3 bis 5 m, freier Durchfluss 800 bis 1500 L/h: aus dem Gedächtnis, ungeprüft; die Kennlinie der eigenen Pumpe verwenden",
  "small pump": "kleine Pumpe",
  "Shut-off head from 2 m, open flow: from memory, unverified; use the curve of your own pump":
    "Nullförderhöhe ab 2 m, freier Durchfluss: aus dem Gedächtnis, ungeprüft; die Kennlinie der eigenen Pumpe verwenden",
  "strong pump": "starke Pumpe",
  "Shut-off head to 7 m, open flow to 1500 L/h: from memory, unverified; use the curve of your own pump":
    "Nullförderhöhe bis 7 m, freier Durchfluss bis 1500 L/h: aus dem Gedächtnis, ungeprüft; die Kennlinie der eigenen Pumpe verwenden",
  // parts
  "processor block": "Prozessorkühler",
  "from memory, unverified: 3 to 10 kPa at 225 L/h; look for the maker's or a tester's curve":
    "aus dem Gedächtnis, ungeprüft: 3 bis 10 kPa bei 225 L/h; die Kurve des Herstellers oder eines Prüfers suchen",
  "graphics block": "Grafikkühler",
  "from memory, unverified: 4 to 12 kPa at 225 L/h; look for the maker's or a tester's curve":
    "aus dem Gedächtnis, ungeprüft: 4 bis 12 kPa bei 225 L/h; die Kurve des Herstellers oder eines Prüfers suchen",
  "radiator": "Radiator",
  "from memory, unverified: 1 to 4 kPa at 225 L/h; look for the maker's or a tester's curve":
    "aus dem Gedächtnis, ungeprüft: 1 bis 4 kPa bei 225 L/h; die Kurve des Herstellers oder eines Prüfers suchen",
  "reservoir": "Ausgleichsbehälter",
  "from memory, unverified; measure its volume by filling it from a jug":
    "aus dem Gedächtnis, ungeprüft; sein Volumen durch Füllen aus einem Messbecher messen",
  "quick coupling": "Schnellkupplung",
  "from memory, unverified: 1 to 6 kPa at 225 L/h a pair":
    "aus dem Gedächtnis, ungeprüft: 1 bis 6 kPa bei 225 L/h je Paar",
  "flow meter": "Durchflussmesser",
  "from memory, unverified: 0.5 to 3 kPa at 225 L/h":
    "aus dem Gedächtnis, ungeprüft: 0,5 bis 3 kPa bei 225 L/h",
  // demos
  "A right angle straight out of a fitting": "Ein rechter Winkel gerade aus der Verschraubung",
  "One 12 mm tube from a pump that faces up to a block that faces sideways, with a single bend.":
    "Ein 12-mm-Rohr von einer Pumpe, die nach oben zeigt, zu einem Kühlblock, der zur Seite zeigt, mit einem einzigen Bogen.",
  "A loop of four tubes": "Ein Kreislauf aus vier Rohren",
  "Pump, block, radiator, reservoir and back: an elbow fitting, corners that follow their ports, a first corner beside its port, and a link without corners.":
    "Pumpe, Kühlblock, Radiator, Ausgleichsbehälter und zurück: eine Winkelverschraubung, Ecken, die ihren Anschlüssen folgen, eine erste Ecke neben ihrem Anschluss und eine Leitung ohne Ecken.",
  "A coil round a reservoir": "Eine Wendel um einen Ausgleichsbehälter",
  "One tube that goes twice and a quarter round a reservoir on its way from the pump to the block.":
    "Ein Rohr, das auf seinem Weg von der Pumpe zum Kühlblock zweieinviertel Mal um einen Ausgleichsbehälter geht.",
  "A spiral that opens": "Eine Spirale, die sich öffnet",
  "One tube that winds outwards as it climbs, from a block in the middle to a port at the rim.":
    "Ein Rohr, das sich im Steigen nach außen windet, von einem Kühlblock in der Mitte zu einem Anschluss am Rand.",
  "A lazy curve through points": "Eine gemächliche Kurve durch Punkte",
  "One tube that swings through three points in one smooth sweep, with no straight and no bend of one radius.":
    "Ein Rohr, das in einem weichen Schwung durch drei Punkte geht, ohne Gerade und ohne Bogen mit einem einzigen Radius.",
  "Right angles with no straight between": "Rechte Winkel ohne Gerade dazwischen",
  "Three right angles so close that their bends touch: each is as large as the room it shares allows.":
    "Drei rechte Winkel so dicht, dass sich ihre Bögen berühren: jeder ist so groß, wie der geteilte Platz es zulässt.",
  "A tube with twisted lobes": "Ein Rohr mit gedrallten Rippen",
  "One tube whose body grows from 15 to 20 mm with six twisted lobes, round again before each fitting; the bore stays round.":
    "Ein Rohr, dessen Körper mit sechs gedrallten Rippen von 15 auf 20 mm wächst, vor jeder Verschraubung wieder rund; die Bohrung bleibt rund.",
  // what new fittings are called
  "elbow 10": "Winkel 10",
  "elbow 12": "Winkel 12",
  "elbow 14": "Winkel 14",
  "elbow 16": "Winkel 16",
  "elbow half-inch": "Winkel half-inch",
  "straight 10": "gerade 10",
  "straight 12": "gerade 12",
  "straight 14": "gerade 14",
  "straight 16": "gerade 16",
  "straight half-inch": "gerade half-inch",
};
