/**
 * What a node is by the standard. Fields of a form hide its properties behind their names, and pictures, forms and frames those of their
 * document, for an extension's scripts too: `<input name="children">` (HTML, "LegacyOverrideBuiltIns" of HTMLFormElement and Document).
 */
const HIDING = new Set(['HTMLFormElement', 'HTMLDocument', 'XMLDocument', 'Document']);

const READING: ProxyHandler<object> = {
  get: (node, name) => {
    const value: unknown = Reflect.get(Object.getPrototypeOf(node), name, node);
    return typeof value === 'function' ? value.bind(node) : value;
  },
  set: (node, name, value) => Reflect.set(Object.getPrototypeOf(node), name, value, node),
};

/** The node to read from: its properties, none hidden. Never to be compared or handed on in the node's place. */
export const own = <N extends object>(node: N): N =>
  HIDING.has((node as { readonly [Symbol.toStringTag]?: string })[Symbol.toStringTag] ?? '')
    ? (new Proxy(node, READING) as N)
    : node;

/** Whether it is in its document. In Firefox what stood in a frame that was taken away is dead: whatever is asked of it throws. */
export function isThere(node: Node): boolean {
  try {
    return own(node).isConnected;
  } catch {
    return false;
  }
}
