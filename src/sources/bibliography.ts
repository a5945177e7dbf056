/** Where a published value or a method comes from. Examples and tests name these keys. */
export interface Source {
  readonly title: string
  readonly detail: string
}

export const bibliography = {
  'nist-sp-811': {
    title: 'NIST Special Publication 811 (2008)',
    detail:
      'Guide for the Use of the International System of Units, appendix B: what is exact stands in bold or in a footnote, all else has seven digits',
  },
  'nist-handbook-44': {
    title: 'NIST Handbook 44, appendix C',
    detail: 'General tables of units of measurement: a US bushel is 2,150.42 cubic inches, printed as 35.239 litres',
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
    detail:
      'Three parts of bark, one of peat and one of sand give about four: the sum shrinks by 15 to 20 per cent; a bale of 3.6 cubic feet of peat makes about 6',
  },
  'acquaah-4-11': {
    title: 'Acquaah, Horticulture: Principles and Practices, table 4-11',
    detail: 'Standard mixes: 5 lb, 2 oz and 3 oz to the cubic yard are 3 kg, 74 g and 111 g to the cubic metre',
  },
  'boost-negative-binomial': {
    title: 'Boost.Math, example neg_binomial_sample_sizes',
    detail: 'Sample sizes for a number of successes at a confidence',
  },
  'williams-1975': {
    title: 'Williams, Biometrics 31:949 (1975), with data of Weil (1970)',
    detail:
      'Pups that survived, litter by litter, of rats on a control diet and on a treated one; the data as the R package aod holds them (rats)',
  },
  'rutgers-geranium': {
    title: 'Rutgers, "Geraniums, 4-inch Pots: Greenhouse Costs of Production Budget" (Brumfield and Mafoua)',
    detail:
      'Of 10,000 started 9,500 are sold at 1.20; direct cost 4,847 (0.48 each) and overhead 1,763 (0.18 each) leave 4,790',
  },
  'growertalks-shrinkage': {
    title: 'Swanekamp, "Cost Accounting: Shrinkage", GrowerTalks, February 2013',
    detail:
      'An overhead of 0.50 a square foot and week becomes 0.55 where 10 per cent is not sold: it adds the losses, which leaves a hundredth unpaid',
  },
  openformula: {
    title: 'OpenDocument 1.2, part 2: OpenFormula',
    detail: 'Published results of PMT and SLN, as the tests of Calligra Sheets quote them',
  },
  'numpy-financial': { title: 'numpy-financial, documentation of pmt', detail: 'A published worked loan payment' },
  'bojkow-trippage': {
    title: 'Bojkow, "Basic considerations on the calculation of the trippage number for returnable containers"',
    detail: 'Trippage is all fillings by all containers put into circulation',
  },
  'lpu-management-accounting': {
    title: 'Lovely Professional University, "Management Accounting" (DCOM302), pages 172 and 173',
    detail: 'Worked cost, price and usage variances of a material, as adverse or favourable',
  },
  'greenhouse-grower-five-keys': {
    title: 'Greenhouse Grower, "Five keys"',
    detail: 'Cost of a square foot and week of bench: a million over 40,000 square feet, 75 per cent in use, 52 weeks',
  },
  'hortscience-53-1133': {
    title: 'HortScience 53(8):1133 (2018), abstract',
    detail:
      '14 firms averaged 2,109 hours, 26,392 dollars and 1,316,111 cuttings in their peak week, for the whole tray process, of which inserting is 70 per cent; the mean of their own ratios is 0.023',
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
    detail: 'Dynamic version of the economic lot size model: twelve months with varying set-up costs cost 864',
  },
  'inventory-analytics': {
    title: 'Rossi, inventoryanalytics (Python library), test wagnerwhitin1958_test, commit 9b1beae',
    detail:
      'Four periods that need 10, 20, 30 and 40, an order cost of 30 and a holding cost of 1: orders of 30, 0, 30 and 40 cost 110. An older test of the name wagnerwhitin1968_test says 120, by orders of 30, 0, 70 and 0',
  },
  'all-units-discount': {
    title: 'Exercise on all-units price breaks, worked at nursingexpertshelp.com, which names no book',
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
  'moneyphp-allocation': {
    title: 'moneyphp/money, documentation of allocation',
    detail: '5 cents by 70 and 30 are 4 and 1; 8.00 to three are 2.67, 2.67 and 2.66',
  },
  definition: { title: 'By arithmetic from the definition', detail: 'Follows exactly from the numbers given' },
} as const satisfies Readonly<Record<string, Source>>

export type SourceKey = keyof typeof bibliography
