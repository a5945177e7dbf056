/**
 * Random numbers that are the same on every machine: the Mersenne Twister MT19937 of M. Matsumoto and T. Nishimura
 * (ACM Transactions on Modeling and Computer Simulation 8:3, 1998), seeded by one number as in their version of 2002.
 */

const size = 624
const shift = 397

/** Gives numbers of at least 0 and below 1, in steps of 2^-53. The seed is a whole number below 2^32. */
export function randomNumbers(seed: number): () => number {
  const next = randomWords(seed)
  return () => {
    const high = next() >>> 5
    const low = next() >>> 6
    return (high * 2 ** 26 + low) / 2 ** 53
  }
}

/** Gives whole numbers below 2^32. */
export function randomWords(seed: number): () => number {
  const state = new Uint32Array(size)
  state[0] = seed
  for (let index = 1; index < size; index++) {
    const before = state[index - 1]!
    state[index] = Math.imul(1812433253, before ^ (before >>> 30)) + index
  }
  let used = size
  return () => {
    if (used === size) {
      renew(state)
      used = 0
    }
    let word = state[used++]!
    word ^= word >>> 11
    word ^= (word << 7) & 0x9d2c5680
    word ^= (word << 15) & 0xefc60000
    return (word ^ (word >>> 18)) >>> 0
  }
}

function renew(state: Uint32Array): void {
  for (let index = 0; index < size; index++) {
    const joined = (state[index]! & 0x80000000) | (state[(index + 1) % size]! & 0x7fffffff)
    state[index] = state[(index + shift) % size]! ^ (joined >>> 1) ^ (joined & 1 ? 0x9908b0df : 0)
  }
}
