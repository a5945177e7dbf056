/** What the entries of the library say, in German, by the English text of src/workbook/library/library.ts. */
export const libraryEntries: Readonly<Record<string, string>> = {
  'height that loose mix drops when it is firmed and watered':
    'Höhe, um die lose Mischung beim Andrücken und Angießen sinkt',
  '5 to 15 %': '5 bis 15 %',
  'loose mix that is spilt at a filling line': 'lose Mischung, die an einer Füllstrecke verschüttet wird',
  '2 to 5 %': '2 bis 5 %',

  Water: 'Wasser',
  'Vessels without any medium, for plants that root easily. It costs changes of water, the time for them, and liquid hormone; roots made in water break when they are potted, so count the losses of potting on.':
    'Gefäße ohne Substrat, für Pflanzen, die leicht bewurzeln. Es kostet das Wechseln des Wassers, die Zeit dafür und flüssiges Bewurzelungshormon; im Wasser gebildete Wurzeln brechen beim Topfen, rechnen Sie also mit den Verlusten beim Umtopfen.',
  'days between two changes of the water': 'Tage zwischen zwei Wasserwechseln',
  '3 to 7 days': '3 bis 7 Tage',
  'days until the cuttings are rooted': 'Tage, bis die Stecklinge bewurzelt sind',
  '14 to 28 days': '14 bis 28 Tage',

  'Peat or coir with perlite': 'Torf oder Kokos mit Perlite',
  'Own mix in trays. It costs the parts, what vanishes in mixing, lime and wetting agent, mixing labour, the tray with its washing, and breakage.':
    'Eigene Mischung in Platten. Sie kostet die Bestandteile, was beim Mischen verschwindet, Kalk und Netzmittel, die Arbeit des Mischens, die Platte mit ihrem Waschen, und Bruch.',
  'sum of the parts that vanishes, three of bark, one of peat, one of sand':
    'Anteil der Summe der Teile, der verschwindet, bei drei Teilen Rinde, einem Torf, einem Sand',
  '15 to 20 %': '15 bis 20 %',

  'One material alone in trays. It holds much water and packs down when it is pressed, so fill loosely and count the settling.':
    'Ein einziges Material in Platten. Es hält viel Wasser und verdichtet sich, wenn es gedrückt wird: füllen Sie locker, und zählen Sie das Setzen mit.',

  'Sand bed': 'Sandbeet',
  'A bed on the ground or on a bench built for it, used for many rounds. It costs the fill by weight or volume, topping up, steaming or washing between rounds, washing the roots before potting, and losses at transplanting.':
    'Ein Beet auf dem Boden oder auf einem dafür gebauten Tisch, für viele Durchgänge. Es kostet die Füllung nach Gewicht oder Volumen, das Ergänzen, Dämpfen oder Waschen zwischen den Durchgängen, das Waschen der Wurzeln vor dem Topfen, und Verluste beim Umpflanzen.',
  'dry density': 'Dichte, trocken',
  'about 1,600 kg/m3': 'etwa 1.600 kg/m3',
  'cuttings stuck on a square metre, by the size of the leaf':
    'Stecklinge auf einem Quadratmeter, je nach Größe der Blätter',
  '300 to 600': '300 bis 600',

  'Bought premix': 'Gekaufte Fertigmischung',
  'A ready mix in trays. It costs more a litre and saves the mixing labour.':
    'Eine fertige Mischung in Platten. Sie kostet mehr pro Liter und spart die Arbeit des Mischens.',

  Rockwool: 'Steinwolle',
  'Blocks in sheets, used once. It costs soaking before use and disposal afterwards; the plant is potted with its block.':
    'Würfel in Matten, einmal verwendet. Sie kostet das Tränken vor dem Gebrauch und danach die Entsorgung; die Pflanze wird mit ihrem Würfel getopft.',

  Peat: 'Torf',
  'Sold in pressed bales that declare fewer litres than they open to. Measure the expansion on one bale of your own; the label or your test wins over any band.':
    'Verkauft in gepressten Ballen, auf denen weniger Liter stehen, als sie lose ergeben. Messen Sie die Auflockerung an einem eigenen Ballen; das Etikett oder Ihr Versuch gilt vor jedem Bereich.',
  'loose litres from one declared litre': 'lose Liter aus einem angegebenen Liter',
  '1.67 to 2.0': '1,67 bis 2,0',
  'water held, in times its dry weight': 'gehaltenes Wasser, als Vielfaches des Trockengewichts',
  '10 to 20': '10 bis 20',
  '3.5 to 4.5': '3,5 bis 4,5',

  Coir: 'Kokos',
  'Sold in pressed bricks by weight; the label says how many loose litres a kilogram gives.':
    'Verkauft in gepressten Ziegeln nach Gewicht; das Etikett sagt, wie viele lose Liter ein Kilogramm ergibt.',
  'loose litres from one kilogram': 'lose Liter aus einem Kilogramm',
  '12 to 15': '12 bis 15',

  'Sold loose in bags. It takes room in a mix and holds little water.':
    'Verkauft lose in Säcken. Es nimmt in einer Mischung Raum ein und hält wenig Wasser.',
  '6.6 to 7.5': '6,6 bis 7,5',

  'Sold loose in bags.': 'Verkauft lose in Säcken.',
  '64 to 160 kg/m3': '64 bis 160 kg/m3',
  '2 to 5': '2 bis 5',

  'Sharp sand': 'Scharfer Sand',
  'Sold by weight, moist. Take the water out of the weight before you reckon litres.':
    'Verkauft nach Gewicht, feucht. Ziehen Sie das Wasser vom Gewicht ab, bevor Sie Liter rechnen.',

  'Sold by the carton of sheets. Unbuffered it is alkaline, so it is soaked in acidified water first.':
    'Verkauft im Karton von Matten. Ungepuffert ist sie alkalisch, deshalb wird sie zuerst in angesäuertem Wasser getränkt.',
  'pH, unbuffered': 'pH, ungepuffert',
  '7 to 8.5': '7 bis 8,5',
}
