import { expect, test } from 'vitest'

test('the functions load: a mutant that keeps a module from loading fails here, since no other test is found then', async () => {
  const { catalogue } = await import('../../src/functions/catalogue')
  expect(catalogue.length).toBeGreaterThan(0)
})
