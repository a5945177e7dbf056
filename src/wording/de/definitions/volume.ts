/** The texts of the functions of volume, each beside the first function that has it. */
export const volume: Readonly<Record<string, string>> = {
  // UNITS
  'Converts a quantity from one unit to another.': 'Rechnet eine Menge von einer Einheit in eine andere um.',
  'Exact factors, by NIST SP 811 and Handbook 44. Volumes, lengths, masses, and mass per volume ("lb/yd3" to "kg/m3"). A gallon, quart, bushel or ton is never guessed: it must say which.':
    'Genaue Faktoren nach NIST SP 811 und Handbook 44. Volumen, Längen, Massen und Masse pro Volumen („lb/yd3“ in „kg/m3“). Gallonen, Quarts, Bushels und Tonnen werden nie erraten: es muss dabeistehen, welche gemeint sind.',
  'the number to convert': 'die umzurechnende Zahl',
  'the unit it is in': 'die Einheit, in der sie vorliegt',
  'the unit it is wanted in': 'die Einheit, in der sie gebraucht wird',
  converted: 'umgerechnet',
  'the converted number': 'die umgerechnete Zahl',
  "Excel's own CONVERT knows other spellings of the units, and no mass per volume. The check is for units that both spell alike, such as ft3, L, m, in, kg.":
    'CONVERT von Excel schreibt die Einheiten anders und kennt keine Masse pro Volumen. Die Prüfung gilt für Einheiten, die beide gleich schreiben, etwa ft3, L, m, in, kg.',
  'Cubic feet to litres': 'Kubikfuß in Liter',
  'A rate of 5 lb per cubic yard in kg per cubic metre': 'Eine Gabe von 5 lb pro Kubikyard in kg pro Kubikmeter',

  // CELLVOLUME
  'Volume of a tapered rectangular cell from its inside measures.':
    'Volumen einer rechteckigen, nach unten engeren Zelle aus ihren Innenmaßen.',
  'Prismatoid rule: the middle section has the mean of the upper and the lower sides. Brimful; the settling of the mix is given in FILL.':
    'Prismatoidformel: der mittlere Querschnitt hat das Mittel der oberen und der unteren Seiten. Randvoll; die Setzung der Mischung wird in FILL angegeben.',
  'inside length at the top': 'Länge innen, oben',
  'inside width at the top': 'Breite innen, oben',
  'inside depth': 'Tiefe innen',
  'inside length at the bottom': 'Länge innen, unten',
  'inside width at the bottom': 'Breite innen, unten',
  volume: 'Volumen',
  'volume of one cell': 'Volumen einer Zelle',
  'area at the top': 'Fläche oben',
  'area half way down': 'Fläche auf halber Tiefe',
  'area at the bottom': 'Fläche unten',
  'prismatoid rule, 1000 mm3 to the mL': 'Prismatoidformel, 1000 mm3 pro mL',
  'A straight cell of 40 by 40 by 50 mm': 'Eine gerade Zelle von 40 mal 40 mal 50 mm',
  'The same, tapering to 28 by 28 mm': 'Dasselbe, unten nur 28 mal 28 mm',

  // ROUNDCELL
  'Volume of a round, tapered cell, plug or pot from its inside measures.':
    'Volumen einer runden, nach unten engeren Zelle, eines Plugs oder Topfes aus den Innenmaßen.',
  'Frustum of a cone. Brimful; the settling of the mix is given in FILL.':
    'Kegelstumpf. Randvoll; die Setzung der Mischung wird in FILL angegeben.',
  'inside diameter at the top': 'Durchmesser innen, oben',
  'inside diameter at the bottom': 'Durchmesser innen, unten',
  'the two diameters squared, and their product': 'die Quadrate der beiden Durchmesser und ihr Produkt',
  'frustum of a cone, 1000 mm3 to the mL': 'Kegelstumpf, 1000 mm3 pro mL',
  'A straight cell of 40 mm across and 50 mm deep': 'Eine gerade Zelle von 40 mm Durchmesser und 50 mm Tiefe',
  'The same, tapering to 28 mm': 'Dasselbe, unten nur 28 mm',

  // FILL
  'Litres of loose medium that fill a number of vessels.': 'Liter loses Substrat, die eine Zahl von Gefäßen füllen.',
  'Settling and spilling divide: with 10 % settling 100 L of full cells take 111.1 L of loose mix, not 110 L. The litres are loose ones.':
    'Für Setzung und Verschüttetes wird geteilt, nicht zugeschlagen: bei 10 % Setzung sind für 100 L gefüllte Zellen 111,1 L lose Mischung nötig, nicht 110 L. Die Liter sind lose.',
  'cells, trays or pots to fill': 'zu füllende Zellen, Platten oder Töpfe',
  'volume of one of them': 'Volumen eines dieser Gefäße',
  'share of its height that loose mix drops when it is firmed and watered':
    'Anteil der Höhe, um den sich lose Mischung beim Andrücken und Angießen setzt',
  'share of the loose mix that is lost at the filling line': 'Anteil der losen Mischung, der beim Füllen verloren geht',
  litres: 'Liter',
  'loose medium': 'loses Substrat',
  'volume of all vessels, settled': 'Volumen aller Gefäße, gesetzt',
  'what remains in the vessels of a loose litre': 'was von einem losen Liter in den Gefäßen bleibt',
  'loose medium to have at hand': 'loses Substrat, das bereitliegen muss',
  'A tray of 72 cells of 4.38 cubic inches holds 5.168 L': 'Eine Platte mit 72 Zellen zu 4,38 Kubikzoll fasst 5,168 L',
  '2,592 cells of 65 mL, the mix settling by a tenth and 3 % spilt':
    '2.592 Zellen zu 65 mL, die Mischung setzt sich um ein Zehntel, und 3 % werden verschüttet',

  // BEDFILL
  'Litres of loose medium that fill a propagation bed.': 'Liter loses Substrat, die ein Vermehrungsbeet füllen.',
  'Settling and spilling divide, as in FILL. The litres are loose ones. A bed of wet sand is heavy: see BLENDWEIGHT.':
    'Für Setzung und Verschüttetes wird geteilt, wie in FILL. Die Liter sind lose. Ein Beet aus nassem Sand ist schwer: siehe BLENDWEIGHT.',
  'inside length of the bed': 'Länge des Beets innen',
  'inside width of the bed': 'Breite des Beets innen',
  'depth of the medium once it has settled': 'Tiefe des Substrats, wenn es sich gesetzt hat',
  'share of the loose mix that is lost while filling': 'Anteil der losen Mischung, der beim Einfüllen verloren geht',
  'volume of the bed, settled': 'Volumen des Beets, gesetzt',
  'what remains in the bed of a loose litre': 'was von einem losen Liter im Beet bleibt',
  'A bed of 4 ft by 20 ft, 4 in deep': 'Ein Beet von 4 ft mal 20 ft, 4 in tief',
  'A bed of 6 m by 1.2 m, 10 cm deep, settling by 8 %': 'Ein Beet von 6 m mal 1,2 m, 10 cm tief, Setzung 8 %',

  // BLOCKS
  'Whole blocks, slabs or sheets (rockwool, foam) for a number of cuttings.':
    'Ganze Blöcke, Matten oder Würfelplatten (Steinwolle, Schaum) für eine Zahl von Stecklingen.',
  'Part of a block counts as a block. spareShare is a share of the sites, as in TRAYS.':
    'Ein angebrochener Block zählt als ganzer. spareShare ist ein Anteil der Plätze, wie in TRAYS.',
  'cuttings that one block, slab or sheet takes':
    'Stecklinge, die ein Block, eine Matte oder eine Würfelplatte aufnimmt',
  'share of the sites that is left empty': 'Anteil der Plätze, die leer bleiben',
  'blocks to buy': 'zu kaufende Blöcke',
  'sites of a block that take a cutting': 'Plätze eines Blocks, die einen Steckling aufnehmen',
  'whole blocks': 'ganze Blöcke',
  '2,450 cuttings in sheets of 98 sites': '2.450 Stecklinge in Würfelplatten mit 98 Plätzen',
  'The same with 2 % of the sites spare': 'Dasselbe, wenn 2 % der Plätze leer bleiben',

  // WATER
  'Litres of water for rooting in water, with its changes.':
    'Liter Wasser für das Bewurzeln in Wasser, mit den Wasserwechseln.',
  'The first filling counts, and a part of an interval counts as a whole one: 21 days with a change every 5 days are 5 fillings.':
    'Die erste Füllung zählt mit, und ein angebrochener Zeitabschnitt zählt als ganzer: 21 Tage mit einem Wechsel alle 5 Tage sind 5 Füllungen.',
  'water in one vessel': 'Wasser in einem Gefäß',
  'vessels in use': 'Gefäße in Gebrauch',
  'days between two changes of the water': 'Tage zwischen zwei Wasserwechseln',
  'days until the cuttings are rooted': 'Tage, bis die Stecklinge bewurzelt sind',
  'water over the whole time': 'Wasser über die ganze Zeit',
  'the first one and the changes': 'die erste Füllung und die Wechsel',
  '12 vessels of 8 L for 21 days, changed every 5 days': '12 Gefäße zu 8 L für 21 Tage, gewechselt alle 5 Tage',

  // WEIGHTTOLITRES
  'Litres of a medium that is sold by weight, such as sand.':
    'Liter eines Substrats, das nach Gewicht verkauft wird, etwa Sand.',
  'The density is that of the dry medium, and moistureShare is water as a share of the moist weight.':
    'Die Dichte ist die des trockenen Substrats, und moistureShare ist das Wasser als Anteil des feuchten Gewichts.',
  'weight as it is sold': 'Gewicht, wie verkauft',
  'loose bulk density of the dry medium': 'lose Schüttdichte des trockenen Substrats',
  'water as a share of the moist weight': 'Wasser als Anteil des feuchten Gewichts',
  'weight without the water': 'Gewicht ohne das Wasser',
  'One tonne of dry sand of 1,600 kg/m3': 'Eine Tonne trockener Sand mit 1.600 kg/m3',
  'The same with 5 % of water': 'Dasselbe mit 5 % Wasser',
}
