/** What a sheet is printed on. */
export type Paper = 'a4' | 'letter';
