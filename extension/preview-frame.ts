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
  /** What the page can be shown as, by the word that is sent, and what the choice is called; null: it has one form. */
  readonly forms: { readonly label: string; readonly words: Readonly<Record<string, string>> } | null;
  readonly find: FindWords;
}

/** The words of the box that finds something in the page. */
export interface FindWords {
  readonly label: string;
  readonly previous: string;
  readonly next: string;
  readonly close: string;
  readonly none: string;
}

/** The page. `nonce` is new for each: only the script below carries it. @param language of the words, ISO 639 */
export function frameHtml(nonce: string, language: string, words: FrameWords): string {
  const policy = [
    "default-src 'none'",
    // The sheet carries its fonts and pictures in itself, and its styles in a style element.
    'img-src data:',
    'font-src data:',
    "style-src 'unsafe-inline'",
    `script-src 'nonce-${nonce}'`,
  ].join('; ');
  return String(html`<!DOCTYPE html>
<html lang="${language}">
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
  ${
    words.forms === null
      ? ''
      : html`<select id="form" aria-label="${words.forms.label}" title="${words.forms.label}">${Object.entries(
          words.forms.words,
        ).map(([form, word]) => html`<option value="${form}">${word}</option>`)}</select>`
  }
  ${words.print === null ? '' : html`<button id="print" type="button">${words.print}</button>`}
</header>
<search id="find" hidden>
  <input id="sought" type="text" aria-label="${words.find.label}" placeholder="${words.find.label}" spellcheck="false">
  <button id="previous" type="button" aria-label="${words.find.previous}" title="${words.find.previous}">↑</button>
  <button id="next" type="button" aria-label="${words.find.next}" title="${words.find.next}">↓</button>
  <span id="found" role="status" data-none="${words.find.none}"></span>
  <span class="space"></span>
  <button id="close" type="button" aria-label="${words.find.close}" title="${words.find.close}">×</button>
</search>
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
header { display: flex; flex-wrap: wrap; align-items: center; gap: 4px 8px; padding: 4px 10px; border-bottom: 1px solid var(--vscode-panel-border, var(--vscode-contrastBorder, transparent)); background: var(--vscode-editorWidget-background); }
.space { flex: 1; }
button { font: inherit; padding: 3px 10px; border: 1px solid var(--vscode-button-border, transparent); border-radius: 2px; cursor: pointer; color: var(--vscode-button-foreground); background: var(--vscode-button-background); }
button:hover { background: var(--vscode-button-hoverBackground); }
select, input { font: inherit; padding: 2px 4px; border-radius: 2px; }
select { max-width: 100%; color: var(--vscode-dropdown-foreground); background: var(--vscode-dropdown-background); border: 1px solid var(--vscode-dropdown-border, transparent); }
input { flex: 0 1 22em; min-width: 6em; box-sizing: border-box; color: var(--vscode-input-foreground); background: var(--vscode-input-background); border: 1px solid var(--vscode-input-border, transparent); }
input::placeholder { color: var(--vscode-input-placeholderForeground); }
select:focus-visible, input:focus-visible { outline: 1px solid var(--vscode-focusBorder); outline-offset: -1px; }
#find { display: flex; flex-wrap: wrap; align-items: center; gap: 4px; padding: 4px 10px; background: var(--vscode-editorWidget-background); border-bottom: 1px solid var(--vscode-panel-border, var(--vscode-contrastBorder, transparent)); }
#find button { color: inherit; background: transparent; padding: 2px 7px; }
#find button:hover { background: var(--vscode-toolbar-hoverBackground); }
#found { color: var(--vscode-errorForeground); }
#whose, #problems { overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
#whose { flex: 0 4 auto; } #problems { flex: 0 1 auto; min-width: 5em; }
#whose { color: var(--vscode-descriptionForeground); }
#view:focus-visible { outline: 2px solid var(--vscode-focusBorder); outline-offset: -2px; }
button:focus-visible { outline: 1px solid var(--vscode-focusBorder); outline-offset: 2px; }
button:disabled { opacity: .5; cursor: default; }
#problems { background: transparent; color: var(--vscode-foreground); border-color: transparent; padding-left: 0; text-align: left; }
#problems:disabled { opacity: 1; cursor: default; text-decoration: none; }
#problems.bad { color: var(--vscode-editorError-foreground, var(--vscode-errorForeground)); }
#problems:hover { text-decoration: underline; }
#none { margin: auto; padding: 2em; max-width: 32em; text-align: center; color: var(--vscode-descriptionForeground); }
#view { flex: 1; position: relative; overflow: hidden; }
iframe { position: absolute; inset: 0; border: 0; width: 100%; height: 100%; background: #fff; transform-origin: 0 0; }
[hidden] { display: none !important; }
body.vscode-high-contrast header, body.vscode-high-contrast-light header { border-bottom: 1px solid var(--vscode-contrastBorder); background: var(--vscode-editor-background); }
body.vscode-high-contrast button, body.vscode-high-contrast-light button { border: 1px solid var(--vscode-contrastBorder); }
body.vscode-high-contrast #problems:enabled, body.vscode-high-contrast-light #problems:enabled { padding-left: 10px; border-color: var(--vscode-contrastBorder); }
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
const header = document.querySelector('header');
const form = document.getElementById('form');
let wanted = null;
let shown = null;
let file = null;
/* The line that was scrolled to: typing on in it leaves the page where the reader put it. */
let scrolledTo = null;
print?.addEventListener('click', () => host.postMessage({ type: 'print' }));
form?.addEventListener('change', () => host.postMessage({ type: 'form', form: form.value }));
problems.addEventListener('click', () => { if (!nextMissing()) host.postMessage({ type: 'problems' }); });

addEventListener('message', ({ data }) => {
  if (data.type === 'page') showPage(data);
  if (data.type === 'reveal') { wanted = data.line; reveal(); }
});

/* In a narrow column the sheet is made smaller as a whole: it keeps the lines that it has on paper. */
const leastWidth = 640;
let width = 0;
new ResizeObserver(() => {
  const scale = Math.min(1, view.clientWidth / leastWidth);
  frame.style.width = view.clientWidth / scale + 'px';
  frame.style.height = view.clientHeight / scale + 'px';
  frame.style.transform = scale === 1 ? '' : 'scale(' + scale + ')';
  /* A box that finds takes from the height only: what was found stays where it is. */
  if (width === view.clientWidth) return;
  width = view.clientWidth;
  scrolledTo = null;
  reveal();
}).observe(view);

/*
 * The editor hears only keys that are pressed in this page: in the inner frame its shortcuts would be dead, and Tab would
 * not come out. So the keys stay here, and what they do to the sheet is done from here.
 */
const takeKeys = () => view.focus({ preventScroll: true });
/* Where the editor gives the keys to this page, they are the sheet's. */
addEventListener('focus', () => setTimeout(() => { if (document.activeElement === document.body) takeKeys(); }));
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
  if (event.key === 'Enter') {
    const step = chosenStep() ?? frame.contentDocument.querySelector('.handtight-here');
    if (step) open(step, true);
    event.preventDefault();
    return;
  }
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

const stepOf = (element) => element?.closest('[data-source-line]');

/* A click shows the step in the text and leaves the reader here; a double click goes there, and so does Enter. */
function open(step, goes) {
  mark(step);
  /* The cursor goes there too: it leaves the page where it is. */
  wanted = scrolledTo = Number(step.dataset.sourceLine);
  host.postMessage({ type: 'open', line: Number(step.dataset.sourceLine), file: step.dataset.sourceFile, goes });
}

/* The page is in a frame of its own, where the editor does not look: it is searched from here. */
const find = document.getElementById('find');
const sought = document.getElementById('sought');
const found = document.getElementById('found');
function seek(backwards) {
  const there = sought.value === '' || frame.contentWindow.find(sought.value, false, backwards, true);
  found.textContent = there ? '' : found.dataset.none;
}
/* The step that holds what was found or chosen last. */
function chosenStep() {
  const chosen = frame.contentDocument.getSelection();
  return chosen?.isCollapsed === false ? stepOf(chosen.anchorNode.parentElement) : null;
}
function closeFind() {
  find.hidden = true;
  takeKeys();
}
addEventListener('keydown', (event) => {
  if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'f' && !view.hidden) {
    find.hidden = false;
    const chosen = String(frame.contentDocument.getSelection() ?? '').trim();
    if (chosen !== '' && !chosen.includes('\\n')) sought.value = chosen;
    sought.select();
    sought.focus();
  } else if (event.key === 'F3') seek(event.shiftKey);
  else if (event.key === 'Escape' && !find.hidden) closeFind();
  else return;
  event.preventDefault();
  event.stopPropagation();
}, true);
sought.addEventListener('keydown', (event) => { if (event.key === 'Enter') seek(event.shiftKey); });
sought.addEventListener('input', () => {
  const chosen = frame.contentDocument.getSelection();
  if (chosen?.rangeCount > 0) chosen.collapseToStart();
  seek(false);
});
document.getElementById('previous').addEventListener('click', () => seek(true));
document.getElementById('next').addEventListener('click', () => seek(false));
document.getElementById('close').addEventListener('click', closeFind);

function showPage({ result, uri, line, form: chosen, status, whose: of }) {
  const there = result.kind !== 'none';
  host.setState({ uri, line, form: chosen });
  if (form) form.value = result.form ?? form.value;
  view.hidden = !there;
  none.hidden = there;
  problems.hidden = !there || status === null;
  header.hidden = problems.hidden && !print && !of;
  if (print) print.disabled = !there;
  whose.textContent = of ?? '';
  if (!there) { none.textContent = result.reason; shown = null; return; }
  problems.textContent = status?.text ?? '';
  problems.disabled = status === null || !status.leads;
  problems.classList.toggle('bad', status?.bad === true);
  file = result.file;
  const key = [uri, result.title, result.form].join('\\n');
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
  body.addEventListener('click', (event) => {
    const step = stepOf(event.target);
    if (step && event.detail === 1 && inner.getSelection()?.isCollapsed !== false) open(step, false);
  });
  body.addEventListener('dblclick', (event) => {
    const step = stepOf(event.target);
    if (step) open(step, true);
  });
  if (inner.scrollingElement) inner.scrollingElement.scrollTop = shown === key ? place : 0;
  if (shown !== key) wanted = scrolledTo = null;
  shown = key;
}

function addMark(inner) {
  if (inner.getElementById('handtight-mark')) return;
  const mark = inner.createElement('style');
  mark.id = 'handtight-mark';
  mark.textContent = '.handtight-here { outline: 2px solid #0a63c9; outline-offset: 2px; border-radius: 2px; } td.handtight-here, th.handtight-here { outline-offset: -1px; } ::selection { background: #ffd33d; color: #000; }';
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

function mark(step) {
  for (const old of frame.contentDocument.querySelectorAll('.handtight-here')) if (old !== step) {
    old.classList.remove('handtight-here');
    old.removeAttribute('aria-current');
  }
  step?.classList.add('handtight-here');
  step?.setAttribute('aria-current', 'step');
}

/* The step of the cursor's line, or the last one that begins above it. */
function reveal() {
  const inner = frame.contentDocument;
  if (view.hidden) return;
  if (wanted === null) return mark(null);
  let best = null;
  for (const element of inner.querySelectorAll('[data-source-line]')) {
    if (element.dataset.sourceFile !== file) continue;
    const line = Number(element.dataset.sourceLine);
    // What says its last line holds no more than its own.
    if (element.dataset.sourceLast !== undefined && Number(element.dataset.sourceLast) < wanted) continue;
    if (line <= wanted && (best === null || line > Number(best.dataset.sourceLine))) best = element;
  }
  mark(best);
  if (best === null) return;
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
