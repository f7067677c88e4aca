package pitchboard.buying.search;

/**
 * Part of the search: all plans with at least and at most so many boards of each stock.
 *
 * @param bound no plan of this part costs less, in units of the model's cost
 * @param number in the order they were made; decides between equal bounds
 */
@SuppressWarnings("ArrayRecordComponent") // read in the inner loops of the search, never compared
record Node(int[] least, int[] most, long bound, int number) implements Comparable<Node> {
    @Override
    public int compareTo(Node other) {
        return bound != other.bound ? Long.compare(bound, other.bound) : Integer.compare(number, other.number);
    }
}
