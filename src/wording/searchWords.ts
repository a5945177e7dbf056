/**
 * Words that a grower may type when looking for a function. They are common words of the trade, from
 * memory. Singular only: the search drops a plural s.
 */

/** Words for the same thing: a search for one of them also looks for the others. */
export const sameWords: readonly (readonly string[])[] = [
  ['liner', 'plug', 'plantlet', 'seedling'],
  ['cutting', 'slip', 'stick'],
  ['strike', 'rooting', 'survival', 'survive', 'take', 'success'],
  ['medium', 'media', 'mix', 'substrate', 'compost', 'soil'],
  ['blend', 'mix', 'recipe', 'ratio'],
  ['bag', 'sack', 'bale', 'brick', 'pack'],
  ['tray', 'flat', 'module'],
  ['cell', 'cavity', 'plug', 'pot', 'vessel'],
  ['block', 'slab', 'rockwool', 'foam', 'sheet'],
  ['bed', 'bench'],
  ['vessel', 'jar', 'glass', 'vase'],
  ['labour', 'labor', 'wage', 'worker'],
  ['litre', 'liter', 'volume'],
  ['weight', 'kilo', 'kg', 'tonne', 'heavy'],
  ['lost', 'loss', 'waste', 'dead', 'failure', 'mortality', 'spill'],
  ['settle', 'compaction', 'firming', 'sink'],
  ['mixshrink', 'shrink', 'shrinkage'],
  ['spare', 'empty', 'gap'],
  ['reuse', 'reusable', 'wash', 'recycle', 'sterilise', 'sterilize'],
  ['breakeven', 'break-even', 'payback', 'catch'],
  ['ledger', 'schedule', 'cashflow', 'instalment'],
  ['compare', 'comparison', 'versus', 'alternative', 'rank'],
  ['variance', 'overspend', 'budget', 'actual'],
  ['adverse', 'unfavourable', 'unfavorable', 'favourable', 'favorable'],
  ['price', 'cost', 'money', 'expense', 'cash'],
  ['delivery', 'freight', 'shipping', 'carriage', 'haulage'],
  ['order', 'buy', 'purchase'],
  ['cheapest', 'best', 'optimal', 'optimise', 'optimize'],
  ['break', 'discount', 'rebate', 'tier'],
  ['supplier', 'vendor', 'merchant', 'dealer'],
  ['stock', 'inventory', 'warehouse', 'storage'],
  ['unit', 'convert', 'conversion', 'gallon', 'bushel', 'quart', 'inch', 'feet', 'yard'],
  ['quote', 'quotation', 'offer', 'tender', 'estimate'],
  ['margin', 'profit', 'markup', 'mark-up', 'earnings'],
  ['warning', 'discount', 'break', 'tier'],
  ['setup', 'handling', 'packing', 'picking'],
  ['bench', 'space', 'area', 'greenhouse', 'glasshouse', 'rent', 'heat'],
  ['pace', 'speed', 'productivity', 'hour'],
  ['stage', 'phase', 'step'],
  ['differ', 'spread', 'vary', 'variation', 'uneven', 'batch'],
  ['surplus', 'spare', 'extra', 'overplant', 'overstick'],
  ['missing', 'short', 'shortage', 'shortfall'],
  ['confidence', 'chance', 'probability', 'certainty', 'risk', 'odds'],
  ['swing', 'tornado', 'sensitivity', 'uncertain', 'uncertainty', 'what-if'],
  ['draw', 'random', 'simulation', 'simulate', 'monte', 'carlo', 'percentile'],
]

/** Things by name, and the words under which the texts speak of them. */
export const namedThings: readonly { readonly names: readonly string[]; readonly spokenOfAs: readonly string[] }[] = [
  {
    names: ['perlite', 'vermiculite', 'peat', 'coir', 'coco', 'sand', 'bark', 'pumice', 'grit', 'moss'],
    spokenOfAs: ['medium', 'mix', 'component', 'loose', 'bag'],
  },
  { names: ['tray', 'flat', 'crate'], spokenOfAs: ['reuse'] },
  { names: ['rockwool', 'stonewool', 'wool', 'foam'], spokenOfAs: ['block', 'slab'] },
]

/** Words that carry no meaning in a search: "cost per cutting", "how many bags". */
export const emptyWords: readonly string[] = [
  'a', 'an', 'and', 'are', 'at', 'by', 'do', 'each', 'for', 'from', 'how', 'i', 'in', 'is', 'it', 'many', 'much', 'my', 'need',
  'of', 'on', 'one', 'or', 'per', 'the', 'to', 'what', 'with',
]
