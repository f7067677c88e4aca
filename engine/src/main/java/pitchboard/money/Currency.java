package pitchboard.money;

/**
 * What prices are counted in.
 *
 * @param code three capitals, such as {@code USD}
 * @param places decimals of the smallest coin, 0 to 3
 */
public record Currency(String code, int places) {
    public Currency {
        if (!isCode(code)) {
            throw new IllegalArgumentException("no currency is called " + code);
        }
        if (places < 0 || places > 3) {
            throw new IllegalArgumentException("a coin of " + places + " decimals");
        }
    }

    public static boolean isCode(String code) {
        return code.length() == 3 && code.chars().allMatch(c -> c >= 'A' && c <= 'Z');
    }
}
