/** A text of a page that is hard to read against what is behind it. */
export interface FaintText {
  readonly text: string;
  /** Contrast by WCAG 2.2, 1 to 21. */
  readonly contrast: number;
}

/**
 * A script for the page, which gives the texts whose contrast is below what WCAG 2.2 success criterion 1.4.3 (AA) asks for: 4.5, or
 * 3 for large text (24 px, or 18.66 px and bold). It is a text because core and tests are checked without the types of a browser.
 */
export const faintTexts = `(() => {
  const channels = (color) => (color.match(/[\\d.]+/g) ?? []).map(Number);
  const luminance = (color) => {
    const [r, g, b] = channels(color).map((value) => {
      const part = value / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const behind = (element) => {
    if (element === null) return "rgb(255, 255, 255)";
    const color = getComputedStyle(element).backgroundColor;
    const [, , , alpha = 1] = channels(color);
    return alpha === 1 ? color : behind(element.parentElement);
  };
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const faint = [];
  while (walker.nextNode()) {
    const text = walker.currentNode.textContent.trim();
    const element = walker.currentNode.parentElement;
    if (text === "" || element.getClientRects().length === 0) continue;
    const style = getComputedStyle(element);
    const [one, other] = [luminance(style.color), luminance(behind(element))];
    const contrast = (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    const size = parseFloat(style.fontSize);
    const isLarge = size >= 24 || (size >= 18.66 && Number(style.fontWeight) >= 700);
    if (contrast < (isLarge ? 3 : 4.5)) faint.push({ text, contrast });
  }
  return faint;
})()`;
