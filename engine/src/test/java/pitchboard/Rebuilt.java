package pitchboard;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import pitchboard.measure.Length;
import pitchboard.stair.Flight;

/** The same record again, but for one component, or with all lengths in it changed alike. */
public final class Rebuilt {
    private Rebuilt() {}

    public static <R extends Record> R with(R record, String component, Object value) {
        return again(record, (name, old) -> name.equals(component) ? value : old);
    }

    /** Changes every length in records, lists and optionals, however deep. */
    public static <R extends Record> R mapLengths(R record, UnaryOperator<Length> change) {
        return again(record, (name, old) -> mapped(old, change));
    }

    private static Object mapped(Object value, UnaryOperator<Length> change) {
        if (value instanceof Length length) {
            return change.apply(length);
        }
        if (value instanceof Flight flight) {
            return new Flight(
                    flight.headJoin(), flight.risers(), change.apply(flight.totalRise()), change.apply(flight.run()));
        }
        if (value instanceof Record record) {
            return mapLengths(record, change);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(each -> mapped(each, change)).toList();
        }
        return value instanceof Optional<?> optional ? optional.map(each -> mapped(each, change)) : value;
    }

    private interface Change {
        Object of(String component, Object old);
    }

    @SuppressWarnings("unchecked")
    private static <R extends Record> R again(R record, Change change) {
        RecordComponent[] components = record.getClass().getRecordComponents();
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        Object[] values = new Object[components.length];
        try {
            for (int i = 0; i < components.length; i++) {
                values[i] = change.of(
                        components[i].getName(), components[i].getAccessor().invoke(record));
            }
            Constructor<?> constructor = record.getClass().getDeclaredConstructor(types);
            return (R) constructor.newInstance(values);
        } catch (ReflectiveOperationException impossible) {
            throw new LinkageError(impossible.getMessage(), impossible);
        }
    }
}
