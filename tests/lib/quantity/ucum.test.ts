import { expect, test } from 'vitest'
import { loadUcum } from '@/lib/quantity/ucum'
import { suite } from './suites'

const ucum = await loadUcum()
const xml = suite('ucum/UcumFunctionalTests.xml')
const cases = (section: string): readonly Readonly<Record<string, string>>[] => {
  const body =
    xml
      ?.replace(/<!--[\s\S]*?-->/g, '')
      .split(`<${section}>`)[1]
      ?.split(`</${section}>`)[0] ?? ''
  return [...body.matchAll(/<case\s([^>]*?)\/?>/g)].map(([, attributes = '']) =>
    Object.fromEntries(
      [...attributes.matchAll(/(\w+)="([^"]*)"/g)].map(([, name = '', value = '']) => [
        name,
        value.replaceAll('&quot;', '"').replaceAll('&lt;', '<').replaceAll('&amp;', '&'),
      ]),
    ),
  )
}

/** One step of the last figure shown. */
const stepOf = (shown: string): number => {
  const [figures = '', power = '0'] = shown.toLowerCase().split('e')
  return 10 ** (Number(power) - (figures.split('.')[1]?.length ?? 0))
}

test.skipIf(xml === undefined)('[Q4] UCUM functional tests, validation (FHIR/Ucum-java)', () => {
  const all = cases('validation')
  const missed = all.filter(({ unit = '', valid }) => ucum.isValid(unit) !== (valid === 'true'))
  console.info(`UCUM validation: ${all.length - missed.length} of ${all.length}`)
  expect(all.length).toBeGreaterThan(400)
  expect(missed).toEqual([])
})

test.skipIf(xml === undefined)('[Q4] UCUM functional tests, conversion (FHIR/Ucum-java)', () => {
  const all = cases('conversion')
  const missed = all.filter(({ value = '', srcUnit = '', dstUnit = '', outcome = '' }) => {
    const converted = ucum.convert(Number(value), srcUnit, dstUnit)
    // Outcomes are rounded to the digits they show.
    return (
      !converted.ok ||
      Math.abs(converted.value - Number(outcome)) > Math.max(stepOf(outcome) * 0.51, 1e-12 * Math.abs(Number(outcome)))
    )
  })
  console.info(`UCUM conversion: ${all.length - missed.length} of ${all.length}`)
  expect(all.length).toBeGreaterThan(20)
  expect(missed).toEqual([])
})
