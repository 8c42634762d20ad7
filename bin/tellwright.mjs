#!/usr/bin/env node
import('../dist/cli/main.mjs').catch(error => {
  if (error?.code === 'ERR_MODULE_NOT_FOUND' && String(error.message).includes('dist/cli')) {
    console.error(
      'tellwright: the command line is not built yet. Run `npm ci` (or `npm run build:cli`) in the project folder.',
    )
    process.exit(2)
  }
  throw error
})
