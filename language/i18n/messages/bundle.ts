/**
 * The texts of a language by their English template, as `say` has it: `{0}` is what the first hole holds. A text may leave
 * out a hole that only English needs (`is`, `them`), and may choose by the English in one: `{en0, select, are {…} other {…}}`.
 */
export type Bundle = Readonly<Record<string, string>>;
