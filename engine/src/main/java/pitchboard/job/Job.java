package pitchboard.job;

import pitchboard.brief.Brief;
import pitchboard.rules.Rulebook;
import pitchboard.site.Site;

/**
 * What people said; everything else is derived from it again whenever it is asked for.
 *
 * @param rulebook the chosen edition with its local changes
 * @param fingerprint of the text the job was read from, printed on every sheet
 */
public record Job(Site site, Brief brief, Rulebook rulebook, Fingerprint fingerprint) {}
