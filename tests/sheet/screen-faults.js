/** Everything that is wrong with a sheet on a screen, as it is laid out now, in words. Runs in the browser, as one expression. */
(() => {
  const faults = [];
  const root = document.documentElement;
  const width = root.clientWidth;
  if (root.scrollWidth > width) faults.push(`the page is ${root.scrollWidth} wide in ${width}`);

  /** What is scrolled by itself may be wider than the screen. */
  const scrolled = (element) =>
    element !== null &&
    (['auto', 'scroll'].includes(getComputedStyle(element).overflowX) || scrolled(element.parentElement));

  const inks = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const parent = node.parentElement;
    const text = node.nodeValue;
    // Drawings have their own tests, and the watermark lies behind all.
    if (text.trim() === '' || parent.closest('svg, .watermark, style') !== null || !parent.checkVisibility()) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const { left, right, top, bottom } of range.getClientRects()) {
      if (right - left < 1) continue;
      // A line box is higher than its letters.
      const high = bottom - top;
      inks.push({ text: text.trim(), node, left, right, top: top + 0.22 * high, bottom: bottom - 0.22 * high });
      if ((right > width + 1 || left < -1) && !scrolled(parent))
        faults.push(`“${text.trim().slice(0, 40)}” goes from ${left.toFixed(0)} to ${right.toFixed(0)} in ${width}`);
    }
    // A word may be broken where its author gave it a place for that: at a hyphen, a dash, a slash or an invisible space.
    for (const { 0: word, index } of text.matchAll(/[^\s\u200b\u2060/–-]+[/–-]?/gu)) {
      if (word.length < 2) continue;
      range.setStart(node, index);
      range.setEnd(node, index + word.length);
      const lines = new Set(
        [...range.getClientRects()].filter((one) => one.width > 0.5).map((one) => Math.round(one.top)),
      );
      if (lines.size > 1) faults.push(`“${word}” is broken, in “${text.trim().slice(0, 60)}”`);
    }
  }
  inks.sort((a, b) => a.top - b.top);
  for (const [at, one] of inks.entries())
    for (const other of inks.slice(at + 1)) {
      if (other.top >= one.bottom - 1) break;
      const wide = Math.min(one.right, other.right) - Math.max(one.left, other.left);
      if (one.node !== other.node && wide > 1.5 && Math.min(one.bottom, other.bottom) - other.top > 1.5)
        faults.push(`“${one.text.slice(0, 40)}” and “${other.text.slice(0, 40)}” overlap`);
    }

  /** CSS pixels: the least that the guidelines for accessible pages ask for (WCAG 2.2, 2.5.8). */
  const finger = 24;
  for (const target of document.querySelectorAll('input, summary')) {
    const { width: wide, height: high } = target.getBoundingClientRect();
    if (wide < finger || high < finger)
      faults.push(
        `${target.getAttribute('aria-label') ?? target.textContent}: ${wide.toFixed(0)} by ${high.toFixed(0)}`,
      );
  }
  for (const one of document.querySelectorAll('main *')) {
    const { overflowX, overflowY } = getComputedStyle(one);
    const cut = (overflow, has, room) => ['hidden', 'clip'].includes(overflow) && has > room + 1;
    if (
      one.closest('svg') === null &&
      (cut(overflowX, one.scrollWidth, one.clientWidth) || cut(overflowY, one.scrollHeight, one.clientHeight))
    )
      faults.push(`“${one.textContent?.trim().slice(0, 40)}” is cut`);
  }
  return faults;
})();
