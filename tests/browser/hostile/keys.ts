/** Names of the language's own making as keys, and structured data that is built to be endless. */
import { adPage, type HostileCase } from './case.ts';

const linked = (json: string): string => adPage({ head: `<script type="application/ld+json">${json}</script>` });
const nested = (open: string, close: string, depth: number, middle: string): string =>
  `${open.repeat(depth)}${middle}${close.repeat(depth)}`;
/** Beside the ad: an item of microdata is taken for the main block. */
const marked = (after: string): string =>
  adPage({ after }).replace('<main>', '<main itemscope itemtype="https://schema.org/Product">');

export const keys: readonly HostileCase[] = [
  {
    name: 'JSON-LD with __proto__ for a key',
    body: linked('{"@type":"Product","__proto__":{"name":"x","price":"1"},"name":"Olympic plates, 230 lb"}'),
  },
  {
    name: 'JSON-LD with constructor and toString for keys',
    body: linked(
      '{"@type":"Product","constructor":{"prototype":{"x":1}},"toString":"x","valueOf":5,"hasOwnProperty":null,"name":"Olympic plates, 230 lb"}',
    ),
  },
  {
    name: 'JSON-LD whose types are prototype names',
    body: linked('[{"@type":"__proto__"},{"@type":["constructor","toString","Product"],"name":"Olympic plates, 230 lb"}]'),
  },
  {
    name: 'JSON-LD whose ids are prototype names',
    body: linked(
      '{"@graph":[{"@id":"__proto__","@type":"Product","name":"Olympic plates","offers":{"@id":"constructor"}},{"@id":"constructor","@type":"Offer","price":"100"}]}',
    ),
  },
  {
    name: 'JSON-LD that names itself in a circle',
    body: linked(
      '{"@graph":[{"@id":"a","@type":"Offer","itemOffered":{"@id":"b"},"offers":{"@id":"b"}},{"@id":"b","@type":"Product","name":"Olympic plates, 230 lb","offers":{"@id":"a"}}]}',
    ),
  },
  {
    name: 'JSON-LD of arrays 100,000 deep',
    body: () => linked(`{"@type":"Product","name":${nested('[', ']', 100_000, '"x"')}}`),
  },
  {
    name: 'JSON-LD of values 50,000 deep',
    body: () => linked(`{"@type":"Product","name":${nested('{"@value":', '}', 50_000, '"x"')}}`),
  },
  {
    name: 'JSON-LD of offers 50,000 deep',
    body: () =>
      linked(`{"@type":"Product","name":"x","offers":${nested('{"@type":"Offer","offers":', '}', 50_000, '{"price":"1"}')}}`),
  },
  {
    name: 'JSON-LD with 100,000 offers',
    body: () =>
      linked(`{"@type":"Product","name":"x","offers":[${'{"@type":"Offer","price":"1"},'.repeat(60_000)}{"price":"2"}]}`),
  },
  { name: 'JSON-LD of 20 MB', body: () => linked(`{"@type":"Product","name":"${'x'.repeat(20_000_000)}"}`) },
  {
    name: 'JSON-LD with prices that are no prices',
    body: linked(
      '[{"@type":"Offer","price":1e999},{"@type":"Offer","price":"NaN"},{"@type":"Offer","price":-100},{"@type":"Offer","price":{}},{"@type":"Offer","price":[]},{"@type":"Offer","price":true},{"@type":"Offer","price":null}]',
    ),
  },
  { name: 'JSON-LD that is no JSON', body: linked('{"@type":"Product","name":"x",,,}}}}{{{{ undefined NaN \u0000 <!-- -->') },
  { name: 'JSON-LD that is made of commas', body: () => linked(`[${' ,'.repeat(300_000)}`) },
  {
    name: 'microdata whose properties are prototype names',
    body: marked(
      '<div itemscope itemtype="https://schema.org/Product"><b itemprop="__proto__ constructor toString name">x</b></div>',
    ),
  },
  {
    name: 'microdata that refers to itself',
    body: marked(
      '<div itemscope itemtype="https://schema.org/Product" itemref="a b" id="a"><b id="b" itemprop="offers" itemscope itemref="a">x</b></div>',
    ),
  },
  {
    name: 'microdata items 3,000 deep',
    body: () =>
      marked(nested('<div itemscope itemtype="https://schema.org/Product"><i itemprop="name">x</i>', '</div>', 3000, '')),
  },
  {
    name: '20,000 microdata items',
    body: () => marked('<i itemscope itemtype="https://schema.org/Offer"><b itemprop="price">1</b></i>'.repeat(20_000)),
  },
  {
    name: 'ids and classes that are prototype names',
    body: adPage({ before: '<div id="__proto__" class="constructor toString">x</div>' }).replace(
      'id="ad"',
      'id="ad" class="__proto__ hasOwnProperty"',
    ),
  },
  {
    name: '20,000 meta elements of one name',
    body: () => adPage({ head: '<meta property="og:title" content="">'.repeat(20_000) }),
  },
];
