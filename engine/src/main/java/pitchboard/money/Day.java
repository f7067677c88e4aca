package pitchboard.money;

import java.util.List;
import java.util.Optional;

/** A day of the calendar, as in {@code 2027-05-14}. */
public record Day(int year, int month, int day) implements Comparable<Day> {
    private static final int[] BEFORE = {0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334};
    private static final List<String> MONTHS = List.of(
            "January",
            "February",
            "March",
            "April",
            "May",
            "June",
            "July",
            "August",
            "September",
            "October",
            "November",
            "December");

    public Day {
        if (!exists(year, month, day)) {
            throw new IllegalArgumentException("no such day: " + year + "-" + month + "-" + day);
        }
    }

    /** The day that {@code 2027-05-14} stands for; empty when it stands for none. */
    public static Optional<Day> find(String text) {
        if (text.length() != 10 || text.charAt(4) != '-' || text.charAt(7) != '-') {
            return Optional.empty();
        }
        String digits = text.substring(0, 4) + text.substring(5, 7) + text.substring(8);
        if (!digits.chars().allMatch(c -> c >= '0' && c <= '9')) {
            return Optional.empty();
        }
        int number = Integer.parseInt(digits);
        return exists(number / 10000, number / 100 % 100, number % 100)
                ? Optional.of(new Day(number / 10000, number / 100 % 100, number % 100))
                : Optional.empty();
    }

    private static boolean exists(int year, int month, int day) {
        return year >= 1900 && year <= 9999 && month >= 1 && month <= 12 && day >= 1 && day <= length(year, month);
    }

    private static int length(int year, int month) {
        int next = month == 12 ? 365 : BEFORE[month];
        return next - BEFORE[month - 1] + (month == 2 && isLeap(year) ? 1 : 0);
    }

    private static boolean isLeap(int year) {
        return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
    }

    /** How many days later this is than the other; below zero when it is earlier. */
    public int daysAfter(Day other) {
        return number() - other.number();
    }

    /** So many days later, none or more. */
    public Day later(int days) {
        int years = year;
        int months = month;
        int left = day + days;
        while (left > length(years, months)) {
            left -= length(years, months);
            months++;
            if (months > 12) {
                months = 1;
                years++;
            }
        }
        return new Day(years, months, left);
    }

    /** Days since the first of January of the year 0. */
    private int number() {
        int years = year - 1;
        int leaps = years / 4 - years / 100 + years / 400;
        int within = BEFORE[month - 1] + day + (month > 2 && isLeap(year) ? 1 : 0);
        return years * 365 + leaps + within;
    }

    /** As a letter has it: {@code 14 May 2027}. */
    public String words() {
        return day + " " + MONTHS.get(month - 1) + " " + year;
    }

    @Override
    public int compareTo(Day other) {
        return Integer.compare(number(), other.number());
    }

    @Override
    public String toString() {
        return year + "-" + (month < 10 ? "0" : "") + month + "-" + (day < 10 ? "0" : "") + day;
    }
}
