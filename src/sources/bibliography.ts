/** Where a published value or a method comes from. Examples and tests name these keys. */
export interface Source {
  readonly title: string
  readonly detail: string
}

export const bibliography = {
  'nist-sp-811': {
    title: 'NIST Special Publication 811 (2008)',
    detail: 'Guide for the Use of the International System of Units, appendix B: exact conversion factors',
  },
  'nist-handbook-44': { title: 'NIST Handbook 44, appendix C', detail: 'General tables of units of measurement' },
  'gpn-calculations': {
    title: 'Greenhouse Product News, "Grower 101: Calculations Part IV"',
    detail: 'Pots per 100 square feet at a spacing',
  },
  'north-creek-plug-sizes': {
    title: 'North Creek Nurseries, "Plug Sizes"',
    detail: 'Published cell volumes in cubic inches and cubic centimetres',
  },
  'garden-club-measurements': {
    title: 'First Men\'s Garden Club of Dallas, "Measurements and Conversions"',
    detail: 'Bags of three cubic feet for 100 square feet at a depth',
  },
  'keith-peat-bales': {
    title: 'Keith, "How Do I Calculate How Much Peat to Add to My Garden?" (blackgold.bz)',
    detail: 'Bales of 3 cubic feet that open to twice as much: 15.75 of them, so 16, for 3.5 cubic yards',
  },
  'woods-end-compost': {
    title: 'Woods End Laboratories, "The True Cost of Compost", Mother Earth News',
    detail: 'Table of bagged compost: 22 bags of 1.5 cubic feet at 5.99 are 131.78',
  },
  'rootmaker-faq': {
    title: 'RootMaker FAQ, "What container mixes do you recommend" (2024)',
    detail: 'Three parts of bark, one of peat and one of sand give about four: the sum shrinks by 15 to 20 per cent',
  },
  'acquaah-4-11': { title: 'Acquaah, Horticulture, table 4-11', detail: 'Rates per cubic yard and per cubic metre' },
  'boost-negative-binomial': {
    title: 'Boost.Math, example neg_binomial_sample_sizes',
    detail: 'Sample sizes for a number of successes at a confidence',
  },
  'ridout-1999': {
    title: 'Ridout, Demetrio and Firth, Biometrics 55:137 (1999)',
    detail: 'Estimating intraclass correlation for binary data',
  },
  'williams-1975': {
    title: 'Williams, Biometrics 31:949 (1975), with data of Weil (1970)',
    detail:
      'Pups that survived, litter by litter, of rats on a control diet and on a treated one; the data as the R package aod holds them',
  },
  'cachon-terwiesch-12-1': {
    title: 'Cachon and Terwiesch, Matching Supply with Demand, 3rd edition, solution of question 12.1 d',
    detail: 'What costs 12, sells at 20 and comes back at 8 is stocked up to a chance of 8/12 = 0.6667',
  },
  'rutgers-geranium': {
    title: 'Rutgers geranium budget',
    detail: 'Direct cost per started plant and the loss of the unsold ones',
  },
  'growertalks-shrinkage': {
    title: 'GrowerTalks, "Cost accounting: shrinkage"',
    detail: 'A worked figure that multiplies by the loss where it must divide',
  },
  openformula: {
    title: 'OpenDocument 1.2, part 2: OpenFormula',
    detail: 'Published results of PMT and other financial functions',
  },
  'blank-tarquin-6-5': {
    title: 'Blank and Tarquin, Engineering Economy, 8th edition (2018), solution of problem 6.5',
    detail:
      'Capital recovery of 50,000 with a salvage of 5,000 over 5 years at 10 per cent: 12,371 at the end of each year',
  },
  'numpy-financial': { title: 'numpy-financial, documentation of pmt', detail: 'A published worked loan payment' },
  'bojkow-trippage': {
    title: 'Bojkow, trippage of returnable containers',
    detail: 'Fillings per container bought at a loss per trip',
  },
  'lpu-management-accounting': {
    title: 'Lovely Professional University, "Management Accounting" (DCOM302), page 172',
    detail: 'Worked cost, price and usage variances of a material, as adverse or favourable',
  },
  'openstax-variances': {
    title: 'OpenStax, "Principles of Accounting, Volume 2: Managerial Accounting", chapter 8, key terms',
    detail: 'A favourable variance is spending less than the standard, an unfavourable one is spending more',
  },
  'greenhouse-grower-five-keys': {
    title: 'Greenhouse Grower, "Five keys"',
    detail: 'Cost of a square foot and week of bench: a million over 40,000 square feet, 75 per cent in use, 52 weeks',
  },
  'hortscience-53-1133': {
    title: 'HortScience 53(8):1133',
    detail: 'Hours, wages and cuttings of several nurseries; the mean of their ratios is not the ratio of their totals',
  },
  'moyer-2024': {
    title:
      'Moyer (Penn State Extension), "Farm Market & Agritourism: markups vs. margins", Fruit Growers News, May 2024',
    detail:
      'A cost of 5 with a markup of 30 per cent sells at 6.50, a margin of 23 per cent; the price of 1 at a margin of 30 per cent',
  },
  'farris-2010': {
    title:
      'Farris, Bendle, Pfeifer and Reibstein, Marketing Metrics, 2nd edition (2010), as in the entry "Markup" of marketing-dictionary.org',
    detail: 'A markup of 50 per cent on a cost of 10 is a price of 15 and a margin of 33.3 per cent',
  },
  'iso-cpp-random': {
    title: 'ISO/IEC 14882 (C++), engines with predefined parameters',
    detail: 'The 10,000th number of mt19937 with its standard seed 5489 is 4123659995',
  },
  'numpy-random': {
    title: 'NumPy, numpy.random.RandomState',
    detail:
      'The same generator with the same seeding: the random numbers, and the percentiles that its percentile() makes of them',
  },
  'stdlib-triangular': {
    title: 'stdlib, namespace stats/base/dists/triangular',
    detail: 'Worked means, medians and modes of triangular distributions',
  },
  'wagner-whitin-1958': {
    title: 'Wagner and Whitin, Management Science 5:89 (1958)',
    detail: 'Dynamic version of the economic lot size model: twelve months with varying set-up costs',
  },
  'inventory-analytics': {
    title: 'Rossi, inventoryanalytics (Python library), test wagnerwhitin1958_test',
    detail:
      'Four periods that need 10, 20, 30 and 40, an order cost of 30 and a holding cost of 1: orders of 30, 0, 30 and 40 cost 110',
  },
  'all-units-discount': {
    title: 'All-units price breaks, operations management text',
    detail: 'Yearly 800, order cost 60, holding 30 per cent, five tiers: orders of 200, 40,080 a year',
  },
  'iso-8601': {
    title: 'ISO 8601, week dates',
    detail:
      'Weeks begin on Monday: Monday 30 December 2019 is the first day of week 1 of 2020, Sunday 31 December 2006 the last of week 52',
  },
  'uark-benches': {
    title: 'University of Arkansas, greenhouse course, unit 2, section 5',
    detail: 'Benches of 240 and 900, together 1,140 square feet, take half of a house of 2,280',
  },
  'faust-dole-lopez': {
    title: 'Faust, Dole and Lopez, Horticultural Reviews, page 156',
    detail: 'Geranium stock gives 2 to 3 cuttings a plant and week, or 30 to 45 a square metre and week',
  },
  'sicoma-capacity': {
    title: 'SICOMA, "What is the difference between filling capacity, uncompacted output and compacted output?"',
    detail:
      'The capacity of a mixer is that of the loose materials filled in; where these lose a fifth, so much less comes out',
  },
  definition: { title: 'By arithmetic from the definition', detail: 'Follows exactly from the numbers given' },
} as const satisfies Readonly<Record<string, Source>>

export type SourceKey = keyof typeof bibliography
