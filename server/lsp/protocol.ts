/** The protocol of language servers, which is bundled once for all parts of this one. */
export * from 'vscode-languageserver/node';
