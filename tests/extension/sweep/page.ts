/** Shows a page in the test's document, with declarative shadow roots, which jsdom leaves as templates. */
const openShadows = (root: ParentNode): void => {
  for (const template of root.querySelectorAll('template[shadowrootmode]')) {
    const shadow = template.parentElement?.attachShadow({ mode: 'open' });
    shadow?.append((template as HTMLTemplateElement).content);
    template.remove();
    if (shadow) openShadows(shadow);
  }
};

export function showPage(html: string): void {
  document.head.replaceChildren();
  document.body.innerHTML = html;
  openShadows(document.body);
}
