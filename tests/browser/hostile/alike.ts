/**
 * Pages that are left out unless all are played (`EVERY_PAGE=1`), each with one that is always played and tries the same defence: another name,
 * another place or another number tells the two apart.
 */
export const ALIKE: Readonly<Record<string, string>> = {
  // Names that hide properties: the same reading past the page's own names.
  'a form around the ad with fields named "nodeType"': 'a form around the ad with fields named after all of these',
  'a form around the ad with fields named "childNodes"': 'a form around the ad with fields named after all of these',
  'a form around the ad with fields named "tagName"': 'a form around the ad with fields named after all of these',
  'a form around the ad with fields named "querySelector" and its like':
    'a form around the ad with fields named after all of these',
  'a form around the ad with fields named "getAttribute" and its like':
    'a form around the ad with fields named after all of these',
  'a form around the ad with fields named "isConnected"': 'a form around the ad with fields named after all of these',
  'a form around the ad with fields named after everything that walks':
    'a form around the ad with fields named after all of these',
  'a form around the ad with fields named after everything that places':
    'a form around the ad with fields named after all of these',
  'a form around the ad with fields named "querySelectorAll", selected':
    'a form around the ad with fields named after everything that walks, selected',
  "elements named as the document's body": "a list with elements named as the document's own",
  "elements named as the document's documentElement": "a list with elements named as the document's own",
  "elements named as the document's createElement": "a list with elements named as the document's own",
  "elements named as the document's querySelectorAll": "a list with elements named as the document's own",
  "elements named as the document's getSelection": "elements named as the document's getSelection, selected",
  "a list with ids of the browser's and of our own globals": "ids that are the names of the browser's and of our own globals",
  // What is built in, spoiled: ours is the browser's own, in a world that the page can't reach.
  'every property of Element.prototype throws, on a list': 'every property of Element.prototype throws',
  'Array.prototype throws': 'Object.prototype is poisoned',
  'JSON throws': 'Function.prototype throws',
  'promises never settle': 'Function.prototype throws',
  'highlights throw': 'ranges and selections throw',
  'computed styles lie, on a list': 'computed styles lie',
  'Symbol.iterator is broken': 'Object.prototype is poisoned',
  'listeners can not be added': 'Function.prototype throws',
  'getters for every named global of ours': "the browser's names are taken",
  // Pages that interfere.
  'takes away what is put into it, once': 'takes away what is put into it',
  'sends our messages as events': 'sends our messages by window',
  'writes to its document while picking': 'opens its document anew while picking',
  'takes its body away while picking': 'takes its root element away while picking',
  'puts another body in its place while picking': 'takes its root element away while picking',
  'a list that opens its document anew while it is read': 'a list that navigates while it is read',
  'a list that grows by nothing new, without end': 'a list that grows without end',
  'a list that turns its ads about all the time': 'a list that rewrites all its cards all the time',
  'a list that moves the labels into a hidden box': 'a list that takes the labels away',
  // Large and deep.
  'prices 2,000 deep': 'blocks 2,000 deep',
  'blocks 2,000 deep, selected': 'blocks 2,000 deep',
  'plain text of 2 MB': 'ten million characters',
  '20,000 elements called a price': '100,000 prices',
  // Frames and styles.
  'frames that come and go while picking': 'a frame that is taken away while picking',
  'shadow roots 1,500 deep, something selected': 'shadow roots 1,500 deep',
  'everything is an inline box': 'everything is a table cell',
  'the page is in a box of no height': 'the page is filtered and turned',
  'a page in which everything can be edited, and nothing used': 'a page that can be edited',
  XML: 'XHTML with upper and lower case',
  // Markup, which goes one way wherever it stands.
  'markup in the price': 'short markup in the price',
  'markup in a former price': 'short markup in the price',
  'markup in a list of goods': 'markup in a table of goods',
  'markup in alternative text': 'markup in labels and class names',
  'markup in a selected text field': 'markup in the selected words',
  'markup as the currency in JSON-LD': 'markup as the price in JSON-LD',
  'markup as the condition in JSON-LD': 'markup as the price in JSON-LD',
  'markup as the description in JSON-LD': 'markup as the name in JSON-LD',
  'markup as the price in microdata': 'markup as the name in microdata',
  'markup as the weight in microdata': 'markup as the name in microdata',
  'short markup in the titles of a list': 'markup in the titles of a list',
  'a base address elsewhere': 'a base address that is a script',
  // Keys and structured data.
  'JSON-LD with constructor and toString for keys': 'JSON-LD with __proto__ for a key',
  'JSON-LD whose ids are prototype names': 'JSON-LD whose types are prototype names',
  'JSON-LD of values 50,000 deep': 'JSON-LD of arrays 100,000 deep',
  'JSON-LD of offers 50,000 deep': 'JSON-LD of arrays 100,000 deep',
  'JSON-LD that is made of commas': 'JSON-LD that is no JSON',
  '20,000 microdata items': 'microdata items 3,000 deep',
  // Odd signs.
  'halves of characters': 'halves of characters, selected',
  'a title of combining marks': 'combining marks by the thousand',
  'a price in Arabic figures': 'a price in wide figures',
  'a price in bold mathematical figures': 'a price in wide figures',
  'a price with its figures turned': 'a price that is written backwards',
  'a price with letters for zeros': 'a price with a look-alike for its sign',
  // Strict policies.
  'a policy that allows nothing, selected': 'a policy that allows nothing',
  'trusted types only, on a list': 'trusted types only',
  'a policy that only reports': 'a policy that allows nothing',
};
