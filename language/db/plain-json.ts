/** As JSON in signs of one byte, which are read without decoding. */
export function plainJson(value: unknown): string {
  return JSON.stringify(value).replace(/[^ -~]/gu, (sign) =>
    sign
      .split('')
      .map((unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
      .join(''),
  );
}
