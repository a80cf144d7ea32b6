/** Folder of the records, unless another is named. */
export const recordsFolder = 'records';

/** Name of the list: one line per record, `SHA-256  NAME`, in the order of closing. Nothing in it is ever changed. */
export const listName = 'records.list';
