/** A font in the bundle for browsers: a data URL. */
declare module '*.ttf' {
  const dataUrl: string;
  export default dataUrl;
}
