/** No text gets into markup as markup, whoever forgets what. */
import { expect, it, test } from 'vitest';
import { html, joined, trusted } from './markup.ts';

const hostile = `<script>"&'`;
const escaped = '&lt;script&gt;&quot;&amp;&#39;';

it('escapes a text between tags and in an attribute, in a list too', () => {
  expect(String(html`<p title="${hostile}">${[hostile, [hostile, 1]]}</p>`)).toBe(
    `<p title="${escaped}">${escaped}${escaped}1</p>`,
  );
});

it('takes a template as it is, and a string that looks like one as text', () => {
  expect(String(html`<p>${html`<b>${hostile}</b>`}${`<b>${hostile}</b>`}</p>`)).toBe(
    `<p><b>${escaped}</b>&lt;b&gt;${escaped}&lt;/b&gt;</p>`,
  );
  expect(String(html`${joined([html`<i>`, html`</i>`], '\n')}`)).toBe('<i>\n</i>');
  expect(String(html`${trusted('<svg/>')}`)).toBe('<svg/>');
});

test('what would hide or turn the text beside it goes', () => {
  expect(String(html`<p title="${'a\u202eb'}">${'c\u0000\u2066d\n5 \u00b5m'}</p>`)).toBe('<p title="ab">cd 5 μm</p>');
});

test('markup and text are distinguished by type', () => {
  // @ts-expect-error: a string is not markup
  joined(['<b>'], ' ');
  // @ts-expect-error: null would be printed as nothing
  html`${null}`;
  // @ts-expect-error: markup is not handed out as a string unnoticed
  const text: string = html`<b></b>`;
  expect(String(text)).toBe('<b></b>');
});
