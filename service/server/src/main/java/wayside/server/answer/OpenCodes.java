package wayside.server.answer;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A text of an answer that is one of a list of codes. The contract says which; a later version may have more. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface OpenCodes {
    /** Names of the lists that it comes from: {@code severity}. */
    String[] value();
}
