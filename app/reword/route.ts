import { z } from 'zod'
import { checkProposal } from '@/lib/draft/reword-check'
import { parseAnswer, parseModelSetup, toRequest } from '@/lib/draft/reword-model'
import { KINDS } from '@/lib/procedure/kinds'

/** Milliseconds a model may take for one line. */
const PATIENCE = 60_000

const bodySchema = z.object({ kind: z.enum(KINDS), text: z.string().min(1).max(2000) })

const setup = () =>
  parseModelSetup(
    process.env.TELLWRIGHT_MODEL,
    process.env.TELLWRIGHT_MODEL_NAME,
    process.env.TELLWRIGHT_MODEL_ELSEWHERE === 'yes',
  )

const refuse = (status: number, message: string) => Response.json({ problem: message }, { status })

/** Says whether a model is set up, and where. Off unless TELLWRIGHT_MODEL is set. */
export const GET = () => {
  const model = setup()
  return model.ok
    ? Response.json({ address: model.value?.address ?? null })
    : refuse(500, model.problems[0]?.message ?? '')
}

/** Asks the user's own model for one line anew; what it proposes passes the same checks as the draft or is refused. */
export const POST = async (request: Request) => {
  const model = setup()
  if (!model.ok) return refuse(500, model.problems[0]?.message ?? '')
  if (model.value === null) return refuse(404, 'no model is set up: TELLWRIGHT_MODEL holds no address')
  // A page of another origin may not use the user's model.
  if (request.headers.get('sec-fetch-site') !== 'same-origin') return refuse(403, 'asked from another origin')
  const body = bodySchema.safeParse(await request.json().catch(() => undefined))
  if (!body.success) return refuse(400, 'expected a kind and a text')
  const { kind, text } = body.data
  try {
    const answer = await fetch(model.value.address, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: toRequest(model.value, kind, text),
      redirect: 'error',
      signal: AbortSignal.timeout(PATIENCE),
    })
    if (!answer.ok) return refuse(502, `the model at ${model.value.address} answered ${answer.status}`)
    const words = parseAnswer(await answer.text())
    if (!words.ok) return refuse(502, words.problems[0]?.message ?? '')
    const checked = checkProposal(kind, text, words.value)
    return checked.ok ? Response.json({ text: checked.value }) : refuse(422, checked.problems[0]?.message ?? '')
  } catch {
    return refuse(502, `the model at ${model.value.address} did not answer. Is it running?`)
  }
}
