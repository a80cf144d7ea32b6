const tour = 'The pictures are in the editor: run *Handtight: Take the Tour* from the command palette.';

/**
 * The page of the packed extension. The editor shows a picture on that page only where it is loaded from an https address,
 * and follows no link to a file; the project has no such address. So pictures become their words, links to files become their
 * text, and the page says where the pictures are.
 *
 * @param readme the README of the project, in Markdown
 */
export function packagedReadme(readme: string): string {
  return readme
    .replace(/^.*tests\/workbench\/pictures\.ts.*$/mu, tour)
    .replace(/^!\[([^\]]*)\]\((?!https:)[^)]*\)\n\n?/gmu, '')
    .replace(/(?<!!)\[([^\]]+)\]\((?!https:|#)[^)]+\)/gu, '$1');
}
