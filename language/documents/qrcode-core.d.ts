/** The part of the library that computes and draws nothing: the whole of it would bring file access into `language/`. */
declare module 'qrcode/lib/core/qrcode.js' {
  export { create } from 'qrcode';
}
