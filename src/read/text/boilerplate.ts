/**
 * Where the ad ends and the site goes on: a short line such as "Similar listings" or "You may also like" that a page puts under an ad,
 * with other people's goods and prices below it.
 */
const HEADING =
  /^[ \t•-]{0,4}(?:(?:similar|related|recommended|more|other|nearby|sponsored|featured|suggested) (?:ads?|listings?|items?|notices|posts|products|results|from|by|like|in|near|for you)\b.{0,30}|(?:you may|you might) (?:also )?(?:like|be interested).{0,20}|(?:people|others) (?:also )?(?:viewed|bought|looked at).{0,20}|today'?s picks|recently viewed|recommended for you|sponsored|weitere anzeigen.{0,30}|ähnliche (?:anzeigen|angebote|artikel).{0,20}|das könnte (?:dich|sie|dir) .{0,30}|andere (?:kunden|nutzer) .{0,30}|zuletzt angesehen)[ \t:]{0,3}$|^[ \t•-]{0,4}(?:(?:similar|related|recommended|more|other|nearby|sponsored) (?:ads?|listings?|notices)(?: (?:near you|from this seller|in your area))?|(?:you may|you might) (?:also )?like|people also viewed|recommended for you|weitere anzeigen|ähnliche anzeigen|das könnte (?:dich|sie|dir|ihnen) auch (?:interessieren|gefallen)) ?:/imu;

/** An ad this short above the heading is no ad: the heading may be its own words. */
const LEAST = 40;

/** Length of the text up to the first such heading, or all of it. Linear: each line is looked at once, from its start. */
export function lengthOfAd(text: string): number {
  // Signs of one length, so that the place found is the place in the text.
  const found = HEADING.exec(text.replaceAll('\u00a0', ' ').replaceAll('’', "'"));
  return found && found.index >= LEAST ? found.index : text.length;
}
