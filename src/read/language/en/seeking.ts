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
    "wtb|iso|want to buy|wanting to buy|wanted to buy|want to purchase|looking to buy|looking to purchase|looking to pick up|looking to get a|looking to get some|looking to find|would like to buy|i'd like to buy|like to purchase|in search of|seeking|searching for|on the hunt for|hunting for|on the lookout for|in the market for|in need of|anyone selling|anybody selling|anyone have|anybody have|anyone got|anybody got|anyone has|does anyone have|does anybody have|does anyone own|has anyone got|anyone out there have|anyone sitting on|anybody sitting on|anyone getting rid of|anybody getting rid of|anyone parting with|anyone want to sell|anyone looking to sell|anyone wanting to sell|if you're selling|if you are selling|if you want to sell|if you have any|who has|who's got|who is selling|i buy|we buy|i'm buying|i am buying|now buying|buying|buying old|lf|buying used|anyones selling|anyone's selling|paying up to|paying cash|paying top|i'll pay|i will pay|i can pay|can pay up to|will pay up to|willing to pay|cash for your|cash paid for|top dollar for|top dollar paid|top prices paid|i pay cash|we pay cash|help me find|hoping to find|hoping to buy|trying to find|trying to buy|show me what you have|show me what you got|text me what you have|tell me what you have|let me know what you have|what do you have|what have you got|want your old|let me take your",
  ),
  words('may-seek', 'looking for|looking 4|lookin for|lookin 4|lookn for|wanted|needed|require'),
  words(
    'after',
    'after one|after 1|after two|after 2|after a pair of|after some|after another|after a spare|after a single|after a|after an',
  ),
  words('needs', 'need|i need|we need|i want|we want|really need|still need|just need|could use|i could use'),
  words('sell', gone),
  words(
    'sell',
    "for sale|selling|selling my|i'm selling|we're selling|we are selling|i am selling|up for sale|fs|moving sale|garage sale|estate sale|yard sale|must sell|must go|looking to sell|want to sell|wanting to sell|need to sell|needing to sell|trying to sell|wish to sell|deciding to sell|have to sell|selling off|sell my|no longer wanted|no longer needed|not needed|home wanted|good home wanted|new home wanted|home needed|new home needed|homes wanted|new owner wanted|new owners wanted|owner wanted|owners wanted|buyer wanted|buyers wanted|offers wanted|sensible offers wanted|unwanted|not wanted|looking for a good home|looking for good home|looking for a new home|looking for new home|looking for a home|looking for a new owner|looking for a buyer|looking for a quick sale|looking for quick sale|looking for offers|looking for reasonable offers|need gone|needs gone|needs to go|need to go|wanted gone|wanted to sell|want gone|need gone by|needs gone by|need the space|need space|need the room|need room|need my garage back|give away|giving away|free to a good home|free to good home",
  ),
  // What the seller would not take says nothing of the goods, like what a trade would be for.
  ['not looking for|not interested in', { code: 'z', sense: 'swap' }],
  [
    "if you're looking for|if you are looking for|if your looking for|anyone looking for|someone looking for|anybody looking for|looking for a trade|looking for trades|looking for trade|looking to trade|looking to get|looking for someone|looking for somebody|iso trade|iso trades|iso a trade|iso to trade|iso swap|iso a swap|wanting to trade|wanted to trade|iso certified|iso rated|iso tested|iso standard|trade wanted|trades wanted|swap wanted|wanted for trade|help wanted|wanted list|always wanted|i wanted|we wanted|you wanted|he wanted|she wanted|they wanted|never wanted|wife wanted|husband wanted|anyone wanted|wanted more|wanted something|wanted it|wanted them|after buying|before buying|without buying|instead of buying|since buying|worth buying|thinking of buying|thinking about buying|when buying|if buying|consider buying|regret buying|buying out|stop buying|keep buying|kept buying|buying it new|buying them new|you need|you'll need|you will need|you may need|you'd need|they need|all you need|everything you need|what you need|don't need|do not need|don't want|doesn't need|no need|didn't need|might need|will need|would need|may need|need help|need a truck|need a trailer|need a van|need a hand|need help loading|need to be|need to know|need to get|need to move|need to make|need to clear|need to find|need paint|need a clean|need cleaning|need new|need the money|need the cash|need cash|need money|i want to see|i want it|i want them|i want gone|i want for|need two people|need 2 people|as needed|if needed|if you need|if required|deposit required|assembly required|some assembly required|required",
    { code: 'z' },
  ],
];
