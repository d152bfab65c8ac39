/** Pages on which no ads stand, all invented. */
import { FILTERS, frame, RELATED, type Structure } from './page-parts.ts';

const only = (name: string, html: string): Structure => ({ name, html, count: 0 });

export const NO_ADS: readonly Structure[] = [
  only('nothing but a frame', frame('<main><h1>Nothing found</h1><p>Try <a href="/all">all ads</a>.</p></main>')),
  only(
    'one ad',
    frame(
      '<main><h1>Olympic plates</h1><p class="price">$120</p><p>Four 45s. <a href="/seller/1">Seller</a></p><p>Also <a href="/ad/2">a bar for $80</a>.</p></main>',
    ),
  ),
  only('filters alone', frame(`<main>${FILTERS}</main>`)),
  only('related searches alone', frame(`<main>${RELATED}</main>`)),
  only(
    'a table of prices without links',
    '<table><tr><th>Plate</th><th>Price</th></tr><tr><td>45 lb iron plate</td><td>$60</td></tr><tr><td>35 lb iron plate</td><td>$50</td></tr><tr><td>25 lb iron plate</td><td>$35</td></tr></table>',
  ),
  only(
    'threads of a forum',
    '<ul><li><a href="/t/1">How straight is straight?</a> 12 replies</li><li><a href="/t/2">Washers as micro plates</a> 8 replies</li><li><a href="/t/3">Rust and oil</a> 40 replies</li></ul>',
  ),
  only(
    'an article that names prices',
    '<article><h1>What iron costs</h1><p>New iron is $2 a pound, says <a href="/a">a dealer</a>, and used iron $1.</p><p>Bumpers are $3 a pound; see <a href="/b">this table</a> for more.</p><h2>Bars</h2><p>A bar for $100 is <a href="/c">rarely straight</a>.</p></article>',
  ),
  only(
    'a shop basket and plans to pay by',
    '<main><h1>Choose a plan</h1><ul><li><h3>Basic</h3><p>$5 a month</p></li><li><h3>Plus</h3><p>$9 a month</p></li></ul><table><tr><td>Basket</td><td>$14</td></tr></table></main>',
  ),
  only(
    'comments that name prices',
    '<section><div class="c"><b>ann</b><p>I paid $100 for mine, and the holes were 53 mm, see <a href="/p/1">here</a> for a picture.</p></div><div class="c"><b>bo</b><p>That is $1 a pound, a fair price for rusty iron if you ask <a href="/u/2">me</a>.</p></div><div class="c"><b>cy</b><p>Mine were $80 last year, from the same man in Quillbrook, <a href="/p/3">photo</a> here.</p></div></section>',
  ),
  only('an empty body', ''),
];
