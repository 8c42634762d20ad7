/** @returns a copy of an object without some of its fields. */
export const without = <T extends object, K extends keyof T>(from: T, fields: readonly K[]): T => {
  const rest = { ...from }
  for (const field of fields) delete rest[field]
  return rest
}
