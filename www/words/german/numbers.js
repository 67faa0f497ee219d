// German for the results: what they are called and where they come from.

/** @type {Record<string, string>} */
export const NUMBERS = {
  "result:Notes": "Hinweise",
  // results label
  "Length": "Länge",
  "Coolant inside": "Kühlmittel darin",
  "Mass": "Masse",
  "Cost of the material": "Kosten des Materials",
  "Mass of coolant": "Masse des Kühlmittels",
  "Length of all tubes": "Länge aller Rohre",
  "Material of all tubes": "Material aller Rohre",
  "Coolant in all tubes": "Kühlmittel in allen Rohren",
  "Mass of all tubes": "Masse aller Rohre",
  "Cost of the material of all tubes": "Kosten des Materials aller Rohre",
  "Mass of coolant in all tubes": "Masse des Kühlmittels in allen Rohren",
  "Piece from": "Teilstück von",
  "Piece to": "Teilstück bis",
  "Material of the piece": "Material des Teilstücks",
  "Mass of the piece": "Masse des Teilstücks",
  "Joint": "Verbindung",
  "Seam": "Naht",
  "Collar": "Bund",
  "Shear in the bond": "Scherung in der Klebung",
  "Shear allowed": "Zulässige Scherung",
  "Stress round the socket": "Spannung um die Muffe",
  "Print service, for the piece": "Druckdienst, für das Teilstück",
  "Print service, for all pieces": "Druckdienst, für alle Teilstücke",
  "Supports": "Stützen",
  "Material with supports and waste": "Material mit Stützen und Abfall",
  "Warmest coolant": "Wärmstes Kühlmittel",
  "Growth from fitted to hottest": "Wachstum vom Einbau bis zum Heißesten",
  "Pressure held against": "Druck, dem standgehalten wird",
  "in a straight": "in einer Geraden",
  "times that inside the tightest bend": "mal so viel innen im engsten Bogen",
  "Stress allowed": "Zulässige Spannung",
  "Factor": "Faktor",
  "Strength used": "Genutzte Festigkeit",
  "Pressure allowed": "Zulässiger Druck",
  "Squeeze of the ring": "Verpressung des Rings",
  "Tube may be off by, ±": "Rohr kann danebenliegen um ±",
  "Fill of the groove": "Füllung der Nut",
  "Chamfer draws in by": "Fase zieht ein um",
  "ring reaches in by": "Ring reicht hinein um",
  "best on a tube of": "am besten auf einem Rohr von",
  "Pressure loss": "Druckverlust",
  "straights": "Geraden",
  "bends": "Bögen",
  "coils": "Wendeln",
  "curves": "Kurven",
  "joints": "Verbindungen",
  "changes of bore at the ends": "Bohrungswechsel an den Enden",
  "Pressure loss at other flows": "Druckverlust bei anderem Durchfluss",
  "Velocity": "Geschwindigkeit",
  "Reynolds number": "Reynolds-Zahl",
  "Keeps air when filled": "Behält Luft beim Füllen",
  "Keeps coolant when drained": "Behält Kühlmittel beim Ablassen",
  "Coolant in the loop": "Kühlmittel im Kreislauf",
  "Specific heat": "Spezifische Wärme",
  "Stated flow": "Angegebener Durchfluss",
  "Loop's loss at the stated flow": "Verlust des Kreislaufs beim angegebenen Durchfluss",
  "Pump's head there": "Förderdruck der Pumpe dort",
  "Head in reserve": "Förderdruck in Reserve",
  "Coolant warms up by": "Kühlmittel erwärmt sich um",
  "Flow that the pump drives": "Durchfluss, den die Pumpe treibt",
  "at a pressure of": "bei einem Druck von",
  "and warms up by": "und erwärmt sich um",
  "Takes": "Nimmt",
  "of the loop": "vom Kreislauf",
  "Outer diameters read": "Gelesene Außendurchmesser",
  "Outer diameter comes out off by": "Außendurchmesser liegt daneben um",
  "Outer diameter: standard deviation": "Außendurchmesser: Standardabweichung",
  "Outer diameter: the next print is within, ±":
    "Außendurchmesser: der nächste Druck liegt innerhalb von ±",
  "Bores read": "Gelesene Innendurchmesser",
  "Bore comes out off by": "Innendurchmesser liegt daneben um",
  "Bore: standard deviation": "Innendurchmesser: Standardabweichung",
  "Bore: the next print is within, ±": "Innendurchmesser: der nächste Druck liegt innerhalb von ±",
  "Lengths read": "Gelesene Längen",
  "Length comes out off by": "Länge liegt daneben um",
  "Tube is aimed at": "Rohr zielt auf",
  "Length of a stick": "Länge eines Stabs",
  "Rings": "Ringe",
  "Outer diameter of an end": "Außendurchmesser eines Endes",
  "Bore of an end": "Innendurchmesser eines Endes",
  "Pressure fell by": "Druck fiel um",
  "of which temperature": "davon durch Temperatur",
  "of which leaked": "davon durch Leck",
  "leaks in the limit's time": "entweicht in der Zeit der Grenze",
  "Leak rate": "Leckrate",
  "or": "oder",
  "One kelvin looks like": "Ein Kelvin sieht aus wie",
  "Energy of a burst": "Energie beim Platzen",
  "Wall": "Wandstärke",
  "Fits the fitting": "Passt in die Verschraubung",
  "Squeeze": "Verpressung",
  "Heat margin": "Wärmereserve",
  "Loss in the tubes": "Verlust in den Rohren",
  "Flow driven": "Geförderter Durchfluss",
  "Coolant in the tubes": "Kühlmittel in den Rohren",
  "Cost": "Kosten",
  "Stops": "Stopps",
  "Cares": "Warnungen",
  // results formula
  "Straights + bend radius × angle + coils + curves, along the centreline":
    "Geraden + Biegeradius × Winkel + Wendeln + Kurven, entlang der Mittellinie",
  "Pappus and Guldin: π/4 (OD² − bore²) × length, less chamfers and rings, with the collars of joints and their adhesive":
    "Pappus und Guldin: π/4 (AD² − ID²) × Länge, ohne Fasen und Ringe, mit den Bunden der Verbindungen und ihrem Klebstoff",
  "Pappus and Guldin: π/4 bore² × length, and the breaks of its edges":
    "Pappus und Guldin: π/4 ID² × Länge, und die Brüche ihrer Kanten",
  "Material × density": "Material × Dichte",
  "Material × price of a litre": "Material × Preis je Liter",
  "Coolant inside × density": "Kühlmittel darin × Dichte",
  "Sum over the runs that are made": "Summe über die machbaren Leitungen",
  "Material of all tubes × price of a litre": "Material aller Rohre × Preis je Liter",
  "Seam − joint length": "Naht − Länge der Verbindung",
  "As stated": "Wie angegeben",
  "Pappus and Guldin, section by section: tube, spigot, socket and collar":
    "Pappus und Guldin, Abschnitt für Abschnitt: Rohr, Zapfen, Muffe und Bund",
  "Counted from the run's start": "Gezählt vom Anfang der Leitung",
  "OD + 2 × (key + gap + the largest of stated wall, tube's wall and printer's least)":
    "AD + 2 × (Nase + Spalt + die größte von angegebener Wand, Wand des Rohrs und kleinster des Druckers)",
  "(p π/4 OD² ÷ (π OD) + M ÷ (π r²)) ÷ glued length: the pressure's thrust, and the moment M of ports as far off as they may be":
    "(p π/4 AD² ÷ (π AD) + M ÷ (π r²)) ÷ geklebte Länge: der Schub des Drucks und das Moment M von Anschlüssen, die so weit danebenliegen wie möglich",
  "Bond strength ÷ safety": "Klebefestigkeit ÷ Sicherheit",
  "Lamé: p (ro² + ri²)/(ro² − ri²), inside the socket, should coolant get there":
    "Lamé: p (ra² + ri²)/(ra² − ri²), in der Muffe, falls Kühlmittel dorthin gelangt",
  "Material × price a cm³ + set-up": "Material × Preis je cm³ + Rüstkosten",
  "Sum over the pieces, or the least order where that is more":
    "Summe über die Teilstücke, oder der Mindestauftrag, wo der mehr ist",
  "Skin that needs support × its mean height above the plate × 5 to 20 % with resin, 10 to 30 % with filament":
    "Haut, die Stützen braucht × ihre mittlere Höhe über der Platte × 5 bis 20 % bei Harz, 10 bis 30 % bei Filament",
  "From material × price of a litre to (material + most supports) × 1.2 × price of a litre":
    "Von Material × Preis je Liter bis (Material + höchste Stützen) × 1,2 × Preis je Liter",
  "The lower of glass transition and heat deflection at 1.8 MPa (ISO 75), less 10 K":
    "Der niedrigere von Glasübergang und Wärmeformbeständigkeit bei 1,8 MPa (ISO 75), weniger 10 K",
  "Length × expansion × (fault temperature − fitted at)":
    "Länge × Ausdehnung × (Störfalltemperatur − eingebaut bei)",
  "The larger of test pressure and working pressure":
    "Der größere von Prüfdruck und Betriebsdruck",
  "Lamé: p (ro² + ri²)/(ro² − ri²), at the bore":
    "Lamé: p (ra² + ri²)/(ra² − ri²), an der Bohrung",
  "Torus membrane: (R − r/2)/(R − r), r the mean radius of the tube":
    "Torusmembran: (R − r/2)/(R − r), r der mittlere Radius des Rohrs",
  "Strength × across layers × warm × lasting ÷ safety":
    "Festigkeit × quer zu den Schichten × warm × dauernd ÷ Sicherheit",
  "Hoop stress × bend factor ÷ stress allowed":
    "Umfangsspannung × Bogenfaktor ÷ zulässige Spannung",
  "Lamé, solved for the pressure: σ (ro² − ri²)/(ro² + ri²) ÷ bend factor":
    "Lamé, nach dem Druck aufgelöst: σ (ra² − ri²)/(ra² + ri²) ÷ Bogenfaktor",
  "1 − (gland − tube)/2 ÷ section": "1 − (Nut − Rohr)/2 ÷ Schnurstärke",
  "What the coupon's readings scatter by, if there are three or more; else the printer's tolerance":
    "Streuung der Messwerte der Passprobe, wenn es drei oder mehr sind; sonst die Toleranz des Druckers",
  "π/4 section² ÷ (depth × width)": "π/4 Schnurstärke² ÷ (Tiefe × Breite)",
  "Chamfer's length × tan(angle)": "Länge der Fase × tan(Winkel)",
  "Section − gap": "Schnurstärke − Spalt",
  "Gland − 2 × section × (1 − 20 %)": "Nut − 2 × Schnurstärke × (1 − 20 %)",
  "Darcy and Weisbach: f (length/bore) ρv²/2 in straights, K ρv²/2 in bends, added up":
    "Darcy und Weisbach: f (Länge/ID) ρv²/2 in Geraden, K ρv²/2 in Bögen, zusammengezählt",
  "Laminar 64/Re below 2300, Colebrook and White from 4000, a straight line between":
    "Laminar 64/Re unter 2300, Colebrook und White ab 4000, dazwischen eine Gerade",
  "Ito's loss of a bend, never less than White's laminar coil":
    "Itos Verlust eines Bogens, nie weniger als Whites laminare Wendel",
  "White's laminar factor up to Ito's critical Reynolds number, then Mishra and Gupta's term over the straight tube's":
    "Whites laminarer Faktor bis zu Itos kritischer Reynolds-Zahl, dann das Glied von Mishra und Gupta über dem des geraden Rohrs",
  "As a coil of the curvature at each place, summed along the curve":
    "Wie eine Wendel der Krümmung an jeder Stelle, entlang der Kurve summiert",
  "Borda and Carnot: (1 − (d₁/d₂)²)² ρv²/2 at each joint, d₁ and d₂ the bore less and plus the printer's tolerance":
    "Borda und Carnot: (1 − (d₁/d₂)²)² ρv²/2 an jeder Verbindung, d₁ und d₂ der Innendurchmesser weniger und mehr die Toleranz des Druckers",
  "Borda and Carnot (1 − β²)² where it widens, Crane 0.5 (1 − β²) where it narrows":
    "Borda und Carnot (1 − β²)², wo es weiter wird, Crane 0,5 (1 − β²), wo es enger wird",
  "As the pressure loss, from a quarter of the stated flow to twice of it":
    "Wie der Druckverlust, von einem Viertel des angegebenen Durchflusses bis zum Doppelten",
  "Flow ÷ (π/4 bore²)": "Durchfluss ÷ (π/4 ID²)",
  "Velocity × bore × density ÷ viscosity": "Geschwindigkeit × ID × Dichte ÷ Viskosität",
  "High points of the centreline along up; what lies over the higher way out × π/4 bore²":
    "Hochpunkte der Mittellinie entlang oben; was über dem höheren Ausgang liegt × π/4 ID²",
  "Low points of the centreline along up; what lies under the lower way out × π/4 bore²":
    "Tiefpunkte der Mittellinie entlang oben; was unter dem tieferen Ausgang liegt × π/4 ID²",
  "Coolant in the tubes + what the stated parts hold":
    "Kühlmittel in den Rohren + was die angegebenen Bauteile fassen",
  "Water: IAPWS SR6-08; mixtures: Melinder's polynomials":
    "Wasser: IAPWS SR6-08; Mischungen: Melinders Polynome",
  "As stated; else water by IAPWS SR6-08, mixtures by Melinder's polynomials":
    "Wie angegeben; sonst Wasser nach IAPWS SR6-08, Mischungen nach Melinders Polynomen",
  "Tubes and parts, added up": "Rohre und Bauteile, zusammengezählt",
  "The pump's curve at the stated flow; ρ g h":
    "Die Kennlinie der Pumpe beim angegebenen Durchfluss; ρ g h",
  "Pump's head − loop's loss": "Förderdruck der Pumpe − Verlust des Kreislaufs",
  "Heat ÷ (density × specific heat × flow)": "Wärme ÷ (Dichte × spezifische Wärme × Durchfluss)",
  "Where the pump's curve and the loop's loss cross, by Chandrupatla's method":
    "Wo sich die Kennlinie der Pumpe und der Verlust des Kreislaufs kreuzen, nach Chandrupatlas Verfahren",
  "The pump's curve at that flow": "Die Kennlinie der Pumpe bei diesem Durchfluss",
  "Tubes as their losses; parts: drop × (flow ÷ flow of the drop)²":
    "Rohre wie ihre Verluste; Bauteile: Druckverlust × (Durchfluss ÷ Durchfluss des Druckverlusts)²",
  "What it takes ÷ what all take": "Was es nimmt ÷ was alle nehmen",
  "Count": "Anzahl",
  "Mean of measured less stated": "Mittel von gemessen weniger angegeben",
  "Sample standard deviation, the sum of squares over n - 1":
    "Standardabweichung der Stichprobe, die Quadratsumme über n - 1",
  "t s sqrt(1 + 1/n), t being Student's for 95 % and n - 1; at least 0.02 mm, which is as fine as calipers read":
    "t s sqrt(1 + 1/n), t nach Student für 95 % und n - 1; mindestens 0,02 mm, so fein wie ein Messschieber liest",
  "All measured lengths over all stated ones, less 1":
    "Alle gemessenen Längen über alle angegebenen, weniger 1",
  "What the end that fitted best measures, for tubes of its size; else the stated outer diameter":
    "Was das Ende misst, das am besten passte, für Rohre seines Maßes; sonst der angegebene Außendurchmesser",
  "Aim − how far outer diameters come out off":
    "Ziel − um wie viel Außendurchmesser danebenliegen",
  "Stated bore − how far bores come out off":
    "Angegebener Innendurchmesser − um wie viel Innendurchmesser danebenliegen",
  "Twice the socket, 2 mm and the rings, and 10 mm to hold it by; up to the next 5 mm":
    "Zweimal die Aufnahme, 2 mm und die Ringe, und 10 mm zum Halten; bis zu den nächsten 5 mm",
  "Place of the end in the ladder, from the thinnest":
    "Platz des Endes in der Stufenfolge, vom dünnsten an",
  "The stated diameter, and three steps of 0.05 mm to either side; the bore steps along, so that the wall stays":
    "Der angegebene Durchmesser und drei Stufen von 0,05 mm nach beiden Seiten; der Innendurchmesser geht mit, sodass die Wand bleibt",
  "As stated, or the coolant in the loop": "Wie angegeben, oder das Kühlmittel im Kreislauf",
  "Start − end": "Anfang − Ende",
  "p (1 − T end ÷ T start), p absolute, T in kelvin":
    "p (1 − T Ende ÷ T Anfang), p absolut, T in Kelvin",
  "What is missing from p start × T end ÷ T start, at the temperature of the start":
    "Was an p Anfang × T Ende ÷ T Anfang fehlt, bei der Temperatur des Anfangs",
  "Leaked × limit's time ÷ time of the test": "Entwichen × Zeit der Grenze ÷ Zeit der Prüfung",
  "Leaked × volume ÷ time": "Entwichen × Volumen ÷ Zeit",
  "Leak rate at 101.325 kPa": "Leckrate bei 101,325 kPa",
  "p ÷ T, p absolute, T in kelvin": "p ÷ T, p absolut, T in Kelvin",
  "Least: slow, at one temperature, less the work on the air about; most: (p − p0) V ÷ (γ − 1), γ 1.4":
    "Mindestens: langsam, bei einer Temperatur, weniger die Arbeit an der Luft ringsum; höchstens: (p − p0) V ÷ (γ − 1), γ 1,4",
  "As asked for": "Wie verlangt",
  "(Outer diameter − bore) ÷ 2": "(Außendurchmesser − Innendurchmesser) ÷ 2",
  "Outer diameter against what each fitting takes":
    "Außendurchmesser gegen das, was jede Verschraubung nimmt",
  "The least and the most of all rings": "Das Kleinste und das Größte aller Ringe",
  "Of the tube that uses most": "Vom Rohr, das am meisten nutzt",
  "Of the tube that holds least": "Vom Rohr, das am wenigsten hält",
  "Warmest coolant that the material stands − the hottest that it gets":
    "Wärmstes Kühlmittel, das das Material aushält − das heißeste, das es wird",
  "Added up, at the stated flow": "Zusammengezählt, beim angegebenen Durchfluss",
  "Where pump and loop agree": "Wo Pumpe und Kreislauf sich einigen",
  "Added up": "Zusammengezählt",
  "Material × price a litre": "Material × Preis eines Liters",
  "Counted": "Gezählt",
  // results source
  "geometry": "Geometrie",
  "common practice, no source": "allgemein üblich, ohne Quelle",
  "equilibrium; the moment as a ring of weld carries it, any handbook of machine elements":
    "Gleichgewicht; das Moment, wie eine ringförmige Schweißnaht es trägt, jedes Handbuch der Maschinenelemente",
  "Lamé and Clapeyron, 1833; any handbook of strength":
    "Lamé und Clapeyron, 1833; jedes Handbuch der Festigkeitslehre",
  "the service's own prices, as stated": "die Preise des Dienstes, wie angegeben",
  "definition of linear expansion": "Definition der Längenausdehnung",
  "from memory, unverified": "aus dem Gedächtnis, ungeprüft",
  "Lamé and Clapeyron, 1833": "Lamé und Clapeyron, 1833",
  "geometry; 12 to 30 % is common practice, no source; 10 to 40 % two design guides":
    "Geometrie; 12 bis 30 % ist allgemein üblich, ohne Quelle; 10 bis 40 % zwei Konstruktionsleitfäden",
  "own readings; else the printer's figures, or 0.1 mm (common practice, no source)":
    "eigene Messwerte; sonst der Wert des Druckers oder 0,1 mm (allgemein üblich, ohne Quelle)",
  "geometry; 85 % at most: two design guides":
    "Geometrie; höchstens 85 %: zwei Konstruktionsleitfäden",
  "Weisbach 1845; see the parts": "Weisbach 1845; siehe die Teile",
  "J. Inst. Civ. Eng. 11 (1939) 133; transition: Gnielinski, Int. J. Heat Mass Transfer 63 (2013) 134, from memory":
    "J. Inst. Civ. Eng. 11 (1939) 133; Übergang: Gnielinski, Int. J. Heat Mass Transfer 63 (2013) 134, aus dem Gedächtnis",
  "Ito, J. Basic Eng. 82 (1960) 131; White, Proc. R. Soc. A 123 (1929) 645":
    "Ito, J. Basic Eng. 82 (1960) 131; White, Proc. R. Soc. A 123 (1929) 645",
  "White 1929; Ito, J. Basic Eng. 81 (1959) 123; Mishra and Gupta, Ind. Eng. Chem. Process Des. Dev. 18 (1979) 130":
    "White 1929; Ito, J. Basic Eng. 81 (1959) 123; Mishra und Gupta, Ind. Eng. Chem. Process Des. Dev. 18 (1979) 130",
  "as coils": "wie Wendeln",
  "Borda 1766; any handbook of flow": "Borda 1766; jedes Handbuch der Strömungslehre",
  "Borda 1766; Crane TP-410": "Borda 1766; Crane TP-410",
  "see the parts": "siehe die Teile",
  "definition": "Definition",
  "IAPWS SR6-08(2011); Melinder, IIR 2010": "IAPWS SR6-08(2011); Melinder, IIR 2010",
  "see the tubes' losses": "siehe die Verluste der Rohre",
  "A data sheet's two numbers make the parabola that is level at no flow (common practice, no source); points are joined by Fritsch and Carlson's monotone cubic (SIAM J. Numer. Anal. 17 (1980) 238).":
    "Die zwei Zahlen eines Datenblatts ergeben die Parabel, die bei null Durchfluss waagerecht ist (allgemein üblich, ohne Quelle); Punkte verbindet die monotone kubische Kurve von Fritsch und Carlson (SIAM J. Numer. Anal. 17 (1980) 238).",
  "first law of thermodynamics": "erster Hauptsatz der Thermodynamik",
  "Adv. Eng. Softw. 28 (1997) 145, from memory":
    "Adv. Eng. Softw. 28 (1997) 145, aus dem Gedächtnis",
  "arithmetic mean": "arithmetisches Mittel",
  "any handbook of statistics": "jedes Handbuch der Statistik",
  "prediction interval of one further value, any handbook of statistics; t: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2":
    "Vorhersageintervall eines weiteren Werts, jedes Handbuch der Statistik; t: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2",
  "definition of linear shrinkage": "Definition der linearen Schwindung",
  "law of the ideal gas": "Gesetz des idealen Gases",
  "Brode, J. Appl. Phys. 26 (1955) 766, from memory":
    "Brode, J. Appl. Phys. 26 (1955) 766, aus dem Gedächtnis",
  "as the report of the changed design": "wie der Bericht des geänderten Entwurfs",
  // results range
  "Exact; conical coils and smooth curves by Gauss and Legendre's rule, to 1e-9.":
    "Exakt; konische Wendeln und weiche Kurven nach der Regel von Gauß und Legendre, auf 1e-9.",
  "Exact, but for the last digits of a number.": "Exakt bis auf die letzten Stellen einer Zahl.",
  "As good as the density; supports and waste are not in it.":
    "So gut wie die Dichte; Stützen und Abfall sind nicht darin.",
  "As good as the price, and in its money; supports, waste and what a service asks for beside are not in it.":
    "So gut wie der Preis und in seiner Währung; Stützen, Abfall und was ein Dienst sonst verlangt, sind nicht darin.",
  "As good as the density.": "So gut wie die Dichte.",
  "Exact on a straight or an even bend: the key stands square to the bend. Adhesive is not in it.":
    "Exakt auf einer Geraden oder einem gleichmäßigen Bogen: die Nase steht rechtwinklig zum Bogen. Klebstoff ist nicht darin.",
  "As the files have it; prints differ by the printer's tolerance.":
    "Wie in der Datei; Drucke weichen um die Toleranz des Druckers ab.",
  "Evenly spread along the joint; a real bond is stressed more at its ends, which the safety factor is for.":
    "Gleichmäßig über die Verbindung verteilt; eine echte Klebung ist an ihren Enden höher belastet, dafür ist der Sicherheitsfaktor da.",
  "As good as the strength, which is from memory, unverified, until you put in your adhesive's.":
    "So gut wie die Festigkeit, die aus dem Gedächtnis und ungeprüft ist, bis die des eigenen Klebstoffs eingetragen ist.",
  "Under the marks, where the collar is thinnest; the spigot inside it bears nothing then.":
    "Unter den Marken, wo der Bund am dünnsten ist; der Zapfen darin trägt dann nichts.",
  "As good as the prices, and in their money; least order, finishing, tax and shipping are not in it.":
    "So gut wie die Preise und in ihrer Währung; Mindestauftrag, Nacharbeit, Steuer und Versand sind nicht darin.",
  "One of each piece in one order. As good as the prices, and in their money; finishing, tax and shipping are not in it.":
    "Je ein Teilstück in einem Auftrag. So gut wie die Preise und in ihrer Währung; Nacharbeit, Steuer und Versand sind nicht darin.",
  "A rough band: how dense supports are is set where the print is prepared. Feet, brims and supports inside the bore are not in it. Powder needs none.":
    "Eine grobe Spanne: wie dicht Stützen sind, wird bei der Druckvorbereitung eingestellt. Füße, Ränder und Stützen in der Bohrung sind nicht darin. Pulver braucht keine.",
  "A fifth of waste at most is common practice, no source: a print that fails costs as much again.":
    "Höchstens ein Fünftel Abfall ist allgemein üblich, ohne Quelle: ein misslungener Druck kostet noch einmal so viel.",
  "Under lasting pressure; 15 K is better. A semi-crystalline material goes by heat deflection alone. Data sheets are of dry test bars, printed and cured as the maker says.":
    "Unter dauerndem Druck; 15 K sind besser. Ein teilkristallines Material richtet sich nur nach der Wärmeformbeständigkeit. Datenblätter gelten für trockene Prüfstäbe, gedruckt und ausgehärtet, wie der Hersteller sagt.",
  "As good as the expansion: sheets of one kind of resin differ by a quarter. What water uptake adds is not in it.":
    "So gut wie die Ausdehnung: Blätter einer Harzart unterscheiden sich um ein Viertel. Was die Wasseraufnahme hinzufügt, ist nicht darin.",
  "Over the air's.": "Über dem der Luft.",
  "Round, elastic, far from the ends; exact there. A dressed body counts at its thinnest wall.":
    "Rund, elastisch, weit von den Enden; dort exakt. Ein geformter Körper zählt an seiner dünnsten Wand.",
  "Thin walls; for thick ones an estimate.": "Dünne Wände; für dicke eine Schätzung.",
  "A judgement: no data of printed tubes over years in warm coolant were found. Each factor is yours to change.":
    "Ein Urteil: Daten gedruckter Rohre über Jahre in warmem Kühlmittel waren nicht zu finden. Jeder Faktor lässt sich ändern.",
  "Each factor is yours to change.": "Jeder Faktor lässt sich ändern.",
  "1 is all of what is allowed. Brittle tubes break at the collar's edge by side load first.":
    "1 ist alles, was zulässig ist. Spröde Rohre brechen zuerst durch Seitenlast an der Kante des Bunds.",
  "As good as the stress allowed.": "So gut wie die zulässige Spannung.",
  "Over the stack: tube as the coupon's scatter or the printer's tolerance says, section by ISO 3601-1 class B, gland 0.05 mm (common practice, no source); at worst all against it, likely the root of the sum of squares.":
    "Über die Toleranzkette: Rohr nach der Streuung der Passprobe oder der Toleranz des Druckers, Schnurstärke nach ISO 3601-1 Klasse B, Nut 0,05 mm (allgemein üblich, ohne Quelle); schlimmstenfalls alles dagegen, wahrscheinlich die Wurzel der Quadratsumme.",
  "About the stated diameter: the files are corrected for what the coupon says of the mean.":
    "Um den angegebenen Durchmesser: die Dateien sind nach dem korrigiert, was die Passprobe zum Mittel sagt.",
  "Guides ask for 15 to 20 degrees. Sand the sealing band round the tube, to Ra 1.6 µm or finer; no scars of supports.":
    "Leitfäden verlangen 15 bis 20 Grad. Das Dichtband rings um das Rohr schleifen, auf Ra 1,6 µm oder feiner; keine Narben von Stützen.",
  "As printed and sanded. Textbook: 27 % at 1.78 mm down to 18 % at 6.99 mm, 20.5 % on average (ISBN 9780203744109, ch. 4).":
    "Wie gedruckt und geschliffen. Lehrbuch: 27 % bei 1,78 mm bis hinab zu 18 % bei 6,99 mm, im Mittel 20,5 % (ISBN 9780203744109, Kap. 4).",
  "The band is ± 30 % where a formula is used outside its published range: at a loop's Reynolds numbers most bends are.":
    "Die Spanne ist ± 30 %, wo eine Formel außerhalb ihres veröffentlichten Bereichs gilt: bei den Reynolds-Zahlen eines Kreislaufs die meisten Bögen.",
  "Moody's chart; between 2300 and 4000 either may hold, and the band says so.":
    "Moodys Diagramm; zwischen 2300 und 4000 kann beides gelten, und die Spanne sagt es.",
  "Published for smooth bends from Re 2e4 to 4e5; outside it ± 30 %.":
    "Veröffentlicht für glatte Bögen von Re 2e4 bis 4e5; außerhalb ± 30 %.",
  "Dean numbers to 2000; turbulent Re to 1e5 and D/d from 6.7 to 346; outside it ± 30 %.":
    "Dean-Zahlen bis 2000; turbulent Re bis 1e5 und D/d von 6,7 bis 346; außerhalb ± 30 %.",
  "As coils; a curve that turns over is no coil, and the band is what covers it.":
    "Wie Wendeln; eine Kurve, die ihre Richtung wechselt, ist keine Wendel, und die Spanne deckt das ab.",
  "At worst, one bore as narrow and the next as wide as the printer may make them; the gap at the seam is not in it.":
    "Schlimmstenfalls eine Bohrung so eng und die nächste so weit, wie der Drucker sie machen kann; der Spalt an der Naht ist nicht darin.",
  "Sharp steps, turbulent flow; β is the smaller bore over the larger.":
    "Scharfe Stufen, turbulente Strömung; β ist der kleinere Innendurchmesser über dem größeren.",
  "The band is ± 30 % where a formula is used outside its published range.":
    "Die Spanne ist ± 30 %, wo eine Formel außerhalb ihres veröffentlichten Bereichs gilt.",
  "The mean over the bore.": "Das Mittel über die Bohrung.",
  "Below 2300 a straight tube is laminar, from 4000 turbulent.":
    "Unter 2300 ist ein gerades Rohr laminar, ab 4000 turbulent.",
  "An estimate: the true surface is level across the bore. Shallower than the bore, air passes beside.":
    "Eine Schätzung: die wahre Oberfläche ist quer zur Bohrung waagerecht. Flacher als die Bohrung zieht Luft daneben vorbei.",
  "An estimate: the true surface is level across the bore.":
    "Eine Schätzung: die wahre Oberfläche ist quer zur Bohrung waagerecht.",
  "Without parts that are not stated.": "Ohne Bauteile, die nicht angegeben sind.",
  "Water 0.01 to 99 °C at the air's pressure; mixtures to 60 %, above their freezing point.":
    "Wasser 0,01 bis 99 °C beim Druck der Luft; Mischungen bis 60 %, über ihrem Gefrierpunkt.",
  "Dyes and additives are not in it: the bottle's own figure goes first.":
    "Farbstoffe und Zusätze sind nicht darin: der Wert auf der Flasche geht vor.",
  "Of a coolant of which only the viscosity is known it is water's; glycol takes up to a tenth.":
    "Bei einem Kühlmittel, von dem nur die Viskosität bekannt ist, die von Wasser; Glykol nimmt bis zu einem Zehntel weg.",
  "Parts go with the flow's square (common practice, no source): fine channels cost more than that at small flows. All stand one after the other.":
    "Bauteile gehen mit dem Quadrat des Durchflusses (allgemein üblich, ohne Quelle): feine Kanäle kosten bei kleinem Durchfluss mehr. Alle liegen hintereinander.",
  "From no flow to the curve's last point.":
    "Von null Durchfluss bis zum letzten Punkt der Kennlinie.",
  "Below zero the pump does not drive the stated flow.":
    "Unter null schafft die Pumpe den angegebenen Durchfluss nicht.",
  "All heat in one round; what the tubes give off is not in it.":
    "Alle Wärme in einer Runde; was die Rohre abgeben, ist nicht darin.",
  "The band is that of the tubes' losses. Parts that are not stated make it too large.":
    "Die Spanne ist die der Rohrverluste. Nicht angegebene Bauteile machen sie zu groß.",
  "At the flow that the pump drives, or the stated one where there is none.":
    "Beim Durchfluss, den die Pumpe treibt, oder dem angegebenen, wo es keinen gibt.",
  "Counted.": "Gezählt.",
  "Taken to be the same for every diameter: what light and nozzle add at an edge is. Near the size measured it holds best.":
    "Für jeden Durchmesser als gleich angenommen: es ist, was Licht und Düse an einer Kante hinzufügen. Nahe dem gemessenen Maß gilt es am besten.",
  "Three readings or more; from three it is wide. It tells of one print of one day: print a coupon again when resin, exposure or nozzle change.":
    "Drei Messwerte oder mehr; bei drei ist es weit. Es gilt für einen Druck an einem Tag: wieder eine Passprobe drucken, wenn sich Harz, Belichtung oder Düse ändern.",
  "Taken to be the same for every bore. Jaws read small bores too small; a drill shank reads truer.":
    "Für jeden Innendurchmesser als gleich angenommen. Messschenkel lesen kleine Bohrungen zu klein; ein Bohrerschaft liest wahrer.",
  "Taken to be the same along every direction. Calipers are off by 0.02 mm: on 60 mm that is 0.03 %.":
    "In jeder Richtung als gleich angenommen. Messschieber liegen um 0,02 mm daneben: auf 60 mm sind das 0,03 %.",
  "Results such as the squeeze are told for the stated diameter.":
    "Ergebnisse wie die Verpressung gelten für den angegebenen Durchmesser.",
  "All along the tube; chamfers, rings and grooves keep their depths.":
    "Am ganzen Rohr entlang; Fasen, Ringe und Rillen behalten ihre Tiefe.",
  "All along the tube. Places along it are divided by how long lengths come out, about the datum.":
    "Am ganzen Rohr entlang. Orte darauf werden durch die Längenabweichung geteilt, um den Bezugspunkt.",
  "Hoses and gauge count too.": "Schläuche und Manometer zählen mit.",
  "Volume and air pressure stay as they are; the thermometer shows the shut-in air.":
    "Volumen und Luftdruck bleiben, wie sie sind; das Thermometer zeigt die eingeschlossene Luft.",
  "A leak slows down as the pressure falls: short tests overstate it a little.":
    "Ein Leck wird langsamer, wenn der Druck fällt: kurze Prüfungen überschätzen es ein wenig.",
  "At the temperature of the start.": "Bei der Temperatur des Anfangs.",
  "Between the two. A joule is an apple dropped from a table.":
    "Zwischen beiden. Ein Joule ist ein Apfel, der vom Tisch fällt.",
  "Over all tubes of the design, changed or not.":
    "Über alle Rohre des Entwurfs, geändert oder nicht.",
  "The thinnest of the tubes that are changed; a dressed body's grooves are not in it.":
    "Das dünnste der geänderten Rohre; die Rillen eines geformten Körpers sind nicht darin.",
  "Within 0.05 mm: more shows on calipers and costs squeeze.":
    "Auf 0,05 mm: mehr zeigt der Messschieber, und es kostet Verpressung.",
  "1 is all of what is allowed.": "1 ist alles, was zulässig ist.",
  "Below zero a stopped pump softens it.": "Unter null macht eine stehende Pumpe es weich.",
  "Supports and waste are not in it.": "Stützen und Abfall sind nicht darin.",
  "In the money of the price; supports, waste, shipping and a service's least order are not in it.":
    "In der Währung des Preises; Stützen, Abfall, Versand und der Mindestauftrag eines Dienstes sind nicht darin.",
};
