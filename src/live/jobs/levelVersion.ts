import { textMark } from "#domain";
import { levelSettings, methodVersion } from "#stats";

/** Other priors, or other digests, and what was worked out before is worked out again. */
export const levelVersion = `${methodVersion}/${textMark(JSON.stringify(levelSettings))}`;
