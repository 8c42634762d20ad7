const hex = (bytes: Uint8Array): string => [...bytes].map(byte => byte.toString(16).padStart(2, '0')).join('')

/** @returns the SHA-256 of the bytes in hexadecimal. @source FIPS 180-4, through the Web Crypto API */
export const sha256 = async (bytes: Uint8Array): Promise<string> =>
  hex(new Uint8Array(await crypto.subtle.digest('SHA-256', new Uint8Array(bytes))))

/** @returns a file's content as bytes, text as UTF-8. */
export const toBytes = (content: string | Uint8Array): Uint8Array =>
  typeof content === 'string' ? new TextEncoder().encode(content) : content
