export const es: Readonly<Record<string, string>> = {};
