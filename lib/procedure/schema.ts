import { z } from 'zod'

/**
 * A zod object that keeps fields it does not know (a newer Tellwright may have written them), while its TypeScript
 * type stays exact, so that a misspelt field is still an error when compiling.
 *
 * @param shape the known fields
 * @returns the loose schema under the strict schema's type
 */
export const openObject = <S extends z.ZodRawShape>(shape: S): z.ZodObject<S> =>
  z.looseObject(shape) as unknown as z.ZodObject<S>
