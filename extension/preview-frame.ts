/**
 * The page of a view: a bar in the editor's colors, and the sheet or the specifications in a frame of its own. The
 * inner frame keeps the page's styles from the editor's and runs no script: its sandbox lets this page reach in, and nothing in it reach out.
 */

import { html } from '@remix-run/html-template';

/** The words of a view's frame. */
export interface FrameWords {
  readonly title: string;
  /** What the inner frame is, for those who do not see it. */
  readonly page: string;
  /** The button that prints; null: nothing to print. */
  readonly print: string | null;
}

/** The page. `nonce` is new for each: only the script below carries it. */
export function frameHtml(nonce: string, words: FrameWords): string {
  const policy = [
    "default-src 'none'",
    // The sheet carries its fonts and pictures in itself, and its styles in a style element.
    'img-src data:',
    'font-src data:',
    "style-src 'unsafe-inline'",
    `script-src 'nonce-${nonce}'`,
  ].join('; ');
  return String(html`<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<title>${words.title}</title>
<style>${html.raw`${style}`}</style>
</head>
<body>
<header>
  <button id="problems" type="button"></button>
  <span id="whose" role="status"></span>
  <span class="space"></span>
  ${words.print === null ? '' : html`<button id="print" type="button">${words.print}</button>`}
</header>
<p id="none" role="status"></p>
<div id="view" tabindex="0" role="document" aria-label="${words.page}"><iframe id="sheet" tabindex="-1" sandbox="allow-same-origin" srcdoc="${empty}" title="${words.page}"></iframe></div>
<script nonce="${nonce}">${html.raw`${script}`}</script>
</body>
</html>`);
}

/** What the inner frame begins with: with a doctype, as heights are counted otherwise without one. */
const empty = '<!doctype html><html><head></head><body></body></html>';

const style = `
html, body { height: 100%; margin: 0; padding: 0; overflow: hidden; }
body { display: flex; flex-direction: column; background: var(--vscode-editor-background); color: var(--vscode-foreground); font: var(--vscode-font-size) var(--vscode-font-family); }
header { display: flex; align-items: center; gap: 8px; padding: 4px 10px; border-bottom: 1px solid var(--vscode-panel-border, var(--vscode-contrastBorder, transparent)); background: var(--vscode-editorWidget-background); }
.space { flex: 1; }
button { font: inherit; padding: 3px 10px; border: 1px solid var(--vscode-button-border, transparent); border-radius: 2px; cursor: pointer; color: var(--vscode-button-foreground); background: var(--vscode-button-background); }
button:hover { background: var(--vscode-button-hoverBackground); }
#whose { color: var(--vscode-descriptionForeground); }
#view:focus-visible { outline: 2px solid var(--vscode-focusBorder); outline-offset: -2px; }
button:focus-visible { outline: 1px solid var(--vscode-focusBorder); outline-offset: 2px; }
button:disabled { opacity: .5; cursor: default; }
#problems { background: transparent; color: var(--vscode-foreground); border-color: transparent; padding-left: 0; text-align: left; }
#problems.bad { color: var(--vscode-editorError-foreground, var(--vscode-errorForeground)); }
#problems:hover { text-decoration: underline; }
#none { margin: auto; padding: 2em; max-width: 32em; text-align: center; color: var(--vscode-descriptionForeground); }
#view { flex: 1; position: relative; overflow: hidden; }
iframe { position: absolute; inset: 0; border: 0; width: 100%; height: 100%; background: #fff; transform-origin: 0 0; }
[hidden] { display: none !important; }
body.vscode-high-contrast header, body.vscode-high-contrast-light header { border-bottom: 1px solid var(--vscode-contrastBorder); background: var(--vscode-editor-background); }
body.vscode-high-contrast button, body.vscode-high-contrast-light button { border: 1px solid var(--vscode-contrastBorder); }
body.vscode-high-contrast #problems, body.vscode-high-contrast-light #problems { padding-left: 10px; }
body.vscode-high-contrast button:hover, body.vscode-high-contrast-light button:hover { outline: 1px dashed var(--vscode-contrastActiveBorder); }
`;

/*
 * Runs in the page. A new sheet takes the old one's place in the same document, so that the scroll place and the fonts
 * stay; the first one is a document of its own, for its head.
 */
const script = `
const host = acquireVsCodeApi();
const frame = document.getElementById('sheet');
const view = document.getElementById('view');
const none = document.getElementById('none');
const problems = document.getElementById('problems');
const print = document.getElementById('print');
const whose = document.getElementById('whose');
let wanted = null;
let shown = null;
let file = null;
/* The line that was scrolled to: typing on in it leaves the page where the reader put it. */
let scrolledTo = null;
print?.addEventListener('click', () => host.postMessage({ type: 'print' }));
problems.addEventListener('click', () => { if (!nextMissing()) host.postMessage({ type: 'problems' }); });

addEventListener('message', ({ data }) => {
  if (data.type === 'page') showPage(data.result, data.uri, data.status, data.whose);
  if (data.type === 'reveal') { wanted = data.line; reveal(); }
});

/* In a narrow column the sheet is made smaller as a whole: it keeps the lines that it has on paper. */
const leastWidth = 640;
new ResizeObserver(() => {
  const scale = Math.min(1, view.clientWidth / leastWidth);
  frame.style.width = view.clientWidth / scale + 'px';
  frame.style.height = view.clientHeight / scale + 'px';
  frame.style.transform = scale === 1 ? '' : 'scale(' + scale + ')';
  scrolledTo = null;
  reveal();
}).observe(view);

/*
 * The editor hears only keys that are pressed in this page: in the inner frame its shortcuts would be dead, and Tab would
 * not come out. So the keys stay here, and what they do to the sheet is done from here.
 */
const takeKeys = () => view.focus({ preventScroll: true });
addEventListener('blur', () => setTimeout(() => { if (document.activeElement === frame && !pressed) takeKeys(); }));
let pressed = false;
function keepKeys(inner) {
  inner.addEventListener('mousedown', () => { pressed = true; });
  inner.addEventListener('mouseup', () => { pressed = false; takeKeys(); });
  inner.addEventListener('keydown', takeKeys);
}
view.addEventListener('keydown', (event) => {
  const scroller = frame.contentDocument.scrollingElement;
  if (event.ctrlKey || event.altKey || event.metaKey || !scroller) return;
  const page = scroller.clientHeight * 0.9;
  const by = { ArrowDown: 40, ArrowUp: -40, PageDown: page, PageUp: -page, ' ': event.shiftKey ? -page : page, Home: -scroller.scrollHeight, End: scroller.scrollHeight }[event.key];
  if (by === undefined) return;
  scroller.scrollTop += by;
  event.preventDefault();
});
document.addEventListener('copy', (event) => {
  const text = String(frame.contentDocument.getSelection() ?? '');
  if (text === '') return;
  event.clipboardData.setData('text/plain', text);
  event.preventDefault();
});

function showPage(result, uri, status, of) {
  const there = result.kind !== 'none';
  host.setState({ uri });
  view.hidden = !there;
  none.hidden = there;
  problems.hidden = !there;
  if (print) print.disabled = !there;
  whose.textContent = of ?? '';
  if (!there) { none.textContent = result.reason; shown = null; return; }
  problems.textContent = status.text;
  problems.classList.toggle('bad', status.bad);
  file = result.file;
  const key = uri + '\\n' + result.title;
  const page = new DOMParser().parseFromString(result.html, 'text/html');
  // No link of the sheet leads anywhere from here.
  for (const element of page.querySelectorAll('script, meta[http-equiv], base, link')) element.remove();
  for (const element of page.querySelectorAll('a[href], [tabindex]')) {
    element.removeAttribute('href');
    element.removeAttribute('tabindex');
  }
  const inner = frame.contentDocument;
  if (shown === null && !inner.documentElement.dataset.keys) {
    inner.documentElement.dataset.keys = 'kept';
    keepKeys(inner);
  }
  const head = inner.importNode(page.head, true);
  const body = inner.importNode(page.body, true);
  if (inner.head.innerHTML !== head.innerHTML) inner.head.replaceWith(head);
  const place = inner.scrollingElement ? inner.scrollingElement.scrollTop : 0;
  inner.documentElement.lang = page.documentElement.lang;
  inner.documentElement.className = page.documentElement.className;
  inner.body.replaceWith(body);
  addMark(inner);
  body.addEventListener('dblclick', ({ target }) => {
    const step = target.closest('[data-source-line]');
    if (step) host.postMessage({ type: 'open', line: Number(step.dataset.sourceLine), file: step.dataset.sourceFile });
  });
  if (inner.scrollingElement) inner.scrollingElement.scrollTop = shown === key ? place : 0;
  if (shown !== key) wanted = scrolledTo = null;
  shown = key;
}

function addMark(inner) {
  if (inner.getElementById('handtight-mark')) return;
  const mark = inner.createElement('style');
  mark.id = 'handtight-mark';
  mark.textContent = '.handtight-here { outline: 2px solid #0a63c9; outline-offset: 2px; border-radius: 2px; } td.handtight-here, th.handtight-here { outline-offset: -1px; }';
  inner.head.append(mark);
}

/* The next thing that is missing below the one shown last; after the last one the first. */
let missingShown = -1;
function nextMissing() {
  const inner = frame.contentDocument;
  const all = inner.querySelectorAll('tr.missing');
  if (all.length === 0) return false;
  missingShown = (missingShown + 1) % all.length;
  show(all[missingShown]);
  return true;
}

/* The step of the cursor's line, or the last one that begins above it. */
function reveal() {
  const inner = frame.contentDocument;
  if (view.hidden || wanted === null) return;
  let best = null;
  for (const element of inner.querySelectorAll('[data-source-line]')) {
    if (element.dataset.sourceFile !== file) continue;
    const line = Number(element.dataset.sourceLine);
    // What says its last line holds no more than its own.
    if (element.dataset.sourceLast !== undefined && Number(element.dataset.sourceLast) < wanted) continue;
    if (line <= wanted && (best === null || line > Number(best.dataset.sourceLine))) best = element;
  }
  for (const old of inner.querySelectorAll('.handtight-here')) if (old !== best) old.classList.remove('handtight-here');
  if (best === null) return;
  best.classList.add('handtight-here');
  if (scrolledTo === wanted) return;
  scrolledTo = wanted;
  show(best);
}

function show(element) {
  const inner = frame.contentDocument;
  const box = element.getBoundingClientRect();
  const height = inner.documentElement.clientHeight;
  // By hand: scrollIntoView would move this page too.
  if (box.top < 0 || box.bottom > height) inner.scrollingElement.scrollTop += box.top - Math.max(0, (height - box.height) / 2);
}

if (frame.contentDocument && frame.contentDocument.compatMode === 'CSS1Compat') host.postMessage({ type: 'ready' });
else frame.addEventListener('load', () => host.postMessage({ type: 'ready' }), { once: true });
`;
