/** Name of the settings file: at the top of a workspace. */
export const settingsName = 'handtight.json';

export function isSettings(uri: string): boolean {
  return uri === settingsName || uri.endsWith(`/${settingsName}`);
}
