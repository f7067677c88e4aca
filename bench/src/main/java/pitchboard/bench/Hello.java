package pitchboard.bench;

/** The least a Java program can do: the floor under every start-up time. */
public final class Hello {
    private Hello() {}

    public static void main(String[] arguments) {
        System.out.println("hello");
    }
}
