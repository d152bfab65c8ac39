/** English words of seeking and of selling. Senses as refiners/wanted.ts weighs them. */
import type { Entry } from '../../text/terms.ts';

const gone = ['need', 'needs', 'want', 'must have', 'need to have', 'want to have']
  .flatMap((verb) =>
    ['it', 'them', 'this', 'these', 'everything', 'all of it', 'it all', 'this stuff', 'all this', 'this all'].map(
      (one) => `${verb} ${one}`,
    ),
  )
  .flatMap((one) =>
    [
      'gone',
      'gone by',
      'gone today',
      'gone tonight',
      'gone tomorrow',
      'gone asap',
      'gone fast',
      'gone this week',
      'gone this weekend',
      'out',
      'moved',
      'cleared',
      'cleared out',
      'picked up',
      'to go',
    ].map((end) => `${one} ${end}`),
  )
  .join('|');

const words = (sense: string, phrases: string): Entry => [phrases, { code: 'W', sense }];

export const SEEKING: readonly Entry[] = [
  words(
    'seek',
    "wtb|iso|want to buy|wanted to buy|looking to buy|i'd like to buy|in search of|seeking|searching for|hunting for|in need of|anyone selling|anybody selling|anyone have|anybody have|anyone got|anybody got|anyone has|does anyone have|does anybody have|anyone sitting on|who has|who's got|i buy|we buy|i'm buying|now buying|buying|buying old|lf|buying used|cash for your|cash paid for|i pay cash|hoping to find|hoping to buy|trying to find|what do you have",
  ),
  words('may-seek', 'looking for|looking 4|lookin for|lookin 4|lookn for|wanted|needed|require'),
  words('after', 'after one|after 1|after two|after 2|after some|after another|after a|after an'),
  words('needs', 'need|i need|we need|i want|we want|really need|still need|just need|could use'),
  words('sell', gone),
  words(
    'sell',
    "for sale|selling|selling my|i'm selling|we're selling|i am selling|up for sale|fs|moving sale|garage sale|estate sale|yard sale|must sell|must go|looking to sell|want to sell|need to sell|selling off|sell my|no longer wanted|no longer needed|not needed|unwanted|not wanted|need gone|needs gone|needs to go|need to go|wanted gone|want gone|need gone by|need the space|need space|need room|give away|giving away|free to a good home",
  ),
  // What the seller would not take says nothing of the goods, like what a trade would be for.
  ['not looking for|not interested in', { code: 'z', sense: 'swap' }],
  [
    "looking to get|iso trade|iso trades|iso swap|iso certified|iso rated|iso tested|iso standard|trade wanted|trades wanted|swap wanted|help wanted|wanted list|always wanted|i wanted|we wanted|you wanted|he wanted|she wanted|they wanted|never wanted|wife wanted|husband wanted|anyone wanted|wanted more|wanted something|wanted it|wanted them|after buying|before buying|without buying|since buying|worth buying|when buying|if buying|consider buying|regret buying|buying out|stop buying|keep buying|kept buying|you need|you'll need|you will need|you'd need|they need|everything you need|what you need|don't need|do not need|don't want|doesn't need|no need|didn't need|might need|will need|would need|may need|need help|need a truck|need a trailer|need a van|need to be|need to move|need paint|need a clean|need cleaning|need new|need the money|need cash|need money|i want it|need 2 people|as needed|if needed|if you need|if required|deposit required|assembly required|required",
    { code: 'z' },
  ],
];
