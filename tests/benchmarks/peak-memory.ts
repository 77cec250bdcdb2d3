/** Run by itself: lays out a panel of as many pieces as the first argument says and prints the peak memory in bytes. */
import { layOutPanel } from '../../server/lattice/lay-out-panel.ts';
import { markKinds } from '../../server/shop/marks/mark-kinds.ts';
import { wavyPanel } from './wavy-panel.ts';

const { panel } = layOutPanel(wavyPanel(Number(process.argv[2])));
const made = markKinds(panel ? [panel] : []).pieces.reduce((sum, { make }) => sum + make, 0);
process.stdout.write(JSON.stringify({ made, peakBytes: process.resourceUsage().maxRSS * 1024 }));
