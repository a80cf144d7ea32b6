const formats = new Map<string, Intl.ListFormat>();

/** How a language lists things (`a, b and c`). Made when it is first used: it takes milliseconds to load its data. */
export function listFormat(language: string, type: 'conjunction' | 'disjunction'): Intl.ListFormat {
  const key = `${language} ${type}`;
  const format = formats.get(key) ?? new Intl.ListFormat(language, { type });
  formats.set(key, format);
  return format;
}
