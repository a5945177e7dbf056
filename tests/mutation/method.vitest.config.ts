import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: { environment: 'node', include: ['tests/core/method/**/*.test.ts'], testTimeout: 60_000 },
})
