import { documents } from './documents.ts';
import { frames } from './frames.ts';
import { huge } from './huge.ts';
import { playHostile } from './play.ts';
import { styles } from './styles.ts';

playHostile({
  'large and deep': huge,
  'shadow trees and frames': frames,
  'styles against everything': styles,
  'other documents': documents,
});
