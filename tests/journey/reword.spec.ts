import { createServer } from 'node:http'
import { expect, test } from '@playwright/test'
import { MODEL_PORT } from '../../playwright.config'
import { lay, sheetOf, talkOf, tempFile, vtt } from './bench'

/** A stand-in for the model a user runs: answers every request with the next of these lines. */
const listen = async (answers: readonly string[]) => {
  const heard: string[] = []
  const server = createServer((request, response) => {
    let body = ''
    request.on('data', chunk => {
      body += chunk
    })
    request.on('end', () => {
      heard.push(body)
      response.setHeader('content-type', 'application/json')
      response.end(JSON.stringify({ choices: [{ message: { content: answers[heard.length - 1] ?? '' } }] }))
    })
  })
  await new Promise<void>(resolve => server.listen(MODEL_PORT, '127.0.0.1', resolve))
  return { heard, close: () => server.close() }
}

test('the user’s own model proposes words: a changed limit is refused, good words are taken by hand', async ({
  page,
}) => {
  const model = await listen(['Torque the bolts to 25 N·m.', 'Tighten the bolts to 20 N·m.'])
  try {
    await lay(page, tempFile('a.vtt', vtt('Torque the bolts to 20 N·m.')))
    await talkOf(page).focus()
    await page.keyboard.press('Shift+Space')
    await page.keyboard.press('Shift+End')
    await page.keyboard.press('s')
    const ask = page.getByRole('button', { name: `Ask the model at 127.0.0.1:${MODEL_PORT} for other words` })
    await ask.click()
    await expect(page.getByText('Refused: the proposal changes a number or a limit')).toBeVisible()
    await ask.click()
    await page.getByRole('button', { name: 'Take these words' }).click()
    await expect(sheetOf(page).locator('[data-kind="step"]')).toContainText('Tighten the bolts to 20 N·m')
    expect(model.heard.length).toBe(2)
  } finally {
    model.close()
  }
})
