import { z } from 'zod'
import { type Result, refusal, success } from '@/lib/procedure/problem'

/** What the user set up: the model's address and its name there. */
export type ModelSetup = { readonly address: string; readonly name: string }

const LOOPBACK = /^(?:localhost|127(?:\.\d{1,3}){3}|\[::1\])$/

/**
 * Reads the setup of a language model that the user runs. Off unless an address is given.
 *
 * @param address of an endpoint with the common chat-completions protocol; on this machine unless `isElsewhereAllowed`
 * @returns null where none is set up; problem `bad-model-address`
 */
export const parseModelSetup = (
  address: string | undefined,
  name: string | undefined,
  isElsewhereAllowed: boolean,
): Result<ModelSetup | null> => {
  if (address === undefined || address.trim() === '') return success(null)
  const refuse = (why: string) =>
    refusal({ code: 'bad-model-address', message: `the model's address “${address}” ${why}` })
  if (!URL.canParse(address))
    return refuse('is no address; expected something like http://127.0.0.1:8080/v1/chat/completions')
  const { protocol, hostname } = new URL(address)
  if (protocol !== 'http:' && protocol !== 'https:') return refuse('must begin with http:// or https://')
  if (!isElsewhereAllowed && !LOOPBACK.test(hostname))
    return refuse('is not on this machine. Set TELLWRIGHT_MODEL_ELSEWHERE=yes if words may leave it')
  return success({ address, name: name ?? 'default' })
}

const answerSchema = z.object({ choices: z.array(z.object({ message: z.object({ content: z.string() }) })).min(1) })

const TASK = `You reword one line of a workshop procedure. Answer with the line alone, no quotes and no comment.
Rules: plain English; a step begins with a verb in its base form and holds one action in at most 20 words;
keep every number, unit, part name, direction, condition and negation exactly; add nothing that is not in the line.`

/** @returns the body of a chat-completions request that asks for one line anew. */
export const toRequest = ({ name }: ModelSetup, kind: string, line: string): string =>
  JSON.stringify({
    model: name,
    temperature: 0,
    messages: [
      { role: 'system', content: TASK },
      { role: 'user', content: `Kind: ${kind}\nLine: ${line}` },
    ],
  })

/** @returns the words of a chat-completions answer; problem `bad-model-answer`. */
export const parseAnswer = (text: string): Result<string> => {
  const refuse = refusal({
    code: 'bad-model-answer',
    message: 'the model answered in a form that is not chat completions',
  })
  try {
    const parsed = answerSchema.safeParse(JSON.parse(text))
    return parsed.success ? success(parsed.data.choices[0]?.message.content ?? '') : refuse
  } catch {
    return refuse
  }
}
