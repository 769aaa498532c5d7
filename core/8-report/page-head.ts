/**
 * The head of a page that stands alone, as the first part of its Handlebars template: it loads nothing from elsewhere, and lets
 * nothing run but the script that it names.
 *
 * @param title text with its `{{...}}`
 * @param script what a script's source must be, such as `'sha256-...'`; none where the page has no script
 * @param more what stands behind the style
 */
export function pageHead(title: string, script?: string, more = ""): string {
  const scripts = script === undefined ? "" : `; script-src ${script}`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'${scripts}">
<title>${title}</title>
<style>{{style}}</style>
${more}</head>
`;
}
