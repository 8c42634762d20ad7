// Fits the weights of lib/draft to walkthroughs with known marks and reports how well they hold on cases left out.
//   node scripts/fit-draft.mjs [--write] [--test FOLDER] FOLDER ...
// A FOLDER holds NAME.gold.json with NAME.vtt and NAME.raw.srt beside it. With --test the model fitted to all FOLDERs is
// also scored on that one. With --write the weights go to lib/draft/*.json.
import { importBundled } from './bundled.mjs'

const { fitDraft } = await importBundled('scripts/fit-draft/main.ts')
fitDraft(process.argv.slice(2))
