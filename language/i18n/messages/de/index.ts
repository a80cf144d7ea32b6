export const de: Readonly<Record<string, string>> = {};
