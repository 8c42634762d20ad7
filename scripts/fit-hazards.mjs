// Fits the weights by which the review tells which step brings which hazard and which caution answers which.
//   node scripts/fit-hazards.mjs [--write]
// It reads scripts/fit-hazards/sheets and lines, prints what is found and what is found wrongly on sheets left out, and with
// --write puts the weights into lib/review/hazard-model.json and caution-model.json.
import { importBundled } from './bundled.mjs'

const { fitHazards } = await importBundled('scripts/fit-hazards/main.ts')
fitHazards(process.argv.slice(2))
