/** The elements that the page's template has, by their names. */
export function element(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no ${id}`);
  return found;
}

export function canvas(id: string): HTMLCanvasElement {
  return element(id) as HTMLCanvasElement;
}

export function input(id: string): HTMLInputElement {
  return element(id) as HTMLInputElement;
}

export function select(id: string): HTMLSelectElement {
  return element(id) as HTMLSelectElement;
}

/** Makes an element with a class and a text. */
export function make<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  style: string,
  text = "",
): HTMLElementTagNameMap[Name] {
  const made = document.createElement(name);
  if (style !== "") made.className = style;
  made.textContent = text;
  return made;
}

/** Takes the text of a data block off the page, which would hold it a second time. */
export function takeText(id: string): string {
  const block = element(id);
  const text = block.textContent ?? "";
  block.remove();
  return text.trim();
}
