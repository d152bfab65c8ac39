/** Pages under strict policies. A breach of one would be reported to the server: nothing of ours may cause one. */
import { adPage, HIT, type HostileCase, listPage } from './case.ts';

const report = `; report-uri ${HIT}/csp`;
const csp = (policy: string) => ({ 'content-security-policy': `${policy}${report}` });

export const policies: readonly HostileCase[] = [
  {
    name: 'a policy that allows nothing',
    body: adPage(),
    headers: csp("default-src 'none'; base-uri 'none'; form-action 'none'; frame-src 'none'"),
  },
  { name: 'a policy that allows nothing, selected', by: 'selection', body: adPage(), headers: csp("default-src 'none'") },
  {
    name: 'a policy that allows nothing, on a list',
    by: 'sweep',
    reads: null,
    body: listPage(),
    headers: csp("default-src 'none'"),
  },
  { name: 'trusted types only', body: adPage(), headers: csp("require-trusted-types-for 'script'; trusted-types 'none'") },
  {
    name: 'trusted types only, on a list',
    by: 'sweep',
    reads: null,
    body: listPage(),
    headers: csp("require-trusted-types-for 'script'; trusted-types 'none'"),
  },
  { name: 'a sandboxed page', body: adPage(), headers: csp('sandbox') },
  { name: 'a sandboxed page, on a list', by: 'sweep', reads: null, body: listPage(), headers: csp('sandbox') },
  {
    name: 'a policy that only reports',
    body: adPage(),
    headers: { 'content-security-policy-report-only': `default-src 'none'; require-trusted-types-for 'script'${report}` },
  },
  { name: 'a page that opens apart', body: adPage(), headers: { 'cross-origin-opener-policy': 'same-origin' } },
  { name: 'a page that embeds nothing of others', body: adPage(), headers: { 'cross-origin-embedder-policy': 'require-corp' } },
  {
    name: 'a page that may use nothing',
    body: adPage(),
    headers: {
      'permissions-policy': 'clipboard-read=(), clipboard-write=(), focus-without-user-activation=(), unload=()',
      'referrer-policy': 'no-referrer',
    },
  },
];
