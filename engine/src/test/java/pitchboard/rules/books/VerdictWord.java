package pitchboard.rules.books;

import pitchboard.rules.Verdict;

/** How tables of expected verdicts write them. */
enum VerdictWord {
    PASS,
    FAIL,
    NOT_APPLICABLE,
    CANNOT_TELL;

    static VerdictWord of(Verdict verdict) {
        return verdict.match(pass -> PASS, fail -> FAIL, none -> NOT_APPLICABLE, unknown -> CANNOT_TELL);
    }
}
