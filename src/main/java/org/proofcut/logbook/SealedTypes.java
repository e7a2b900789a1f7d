package org.proofcut.logbook;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.cfg.MapperConfig;
import com.fasterxml.jackson.databind.introspect.Annotated;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.NopAnnotationIntrospector;
import com.fasterxml.jackson.databind.jsontype.NamedType;
import com.fasterxml.jackson.databind.jsontype.TypeResolverBuilder;
import com.fasterxml.jackson.databind.jsontype.impl.StdTypeResolverBuilder;
import java.util.List;
import java.util.stream.Stream;

/**
 * Writes each value of a sealed interface with the simple name of its type, in {@code "is"}, and
 * knows from the interface which types those can be; the core needs no annotations for it.
 */
final class SealedTypes extends NopAnnotationIntrospector {

  private static final long serialVersionUID = 1L;

  private static final JsonTypeInfo.Value BY_NAME =
      JsonTypeInfo.Value.construct(
          JsonTypeInfo.Id.NAME, JsonTypeInfo.As.PROPERTY, "is", null, false, true);

  @Override
  public TypeResolverBuilder<?> findTypeResolver(
      MapperConfig<?> config, AnnotatedClass annotated, JavaType baseType) {
    return isSealedInterface(annotated.getRawType())
        ? new StdTypeResolverBuilder().init(BY_NAME, null)
        : null;
  }

  @Override
  public List<NamedType> findSubtypes(Annotated annotated) {
    return annotated instanceof AnnotatedClass && isSealedInterface(annotated.getRawType())
        ? Stream.of(annotated.getRawType().getPermittedSubclasses())
            .map(SealedTypes::named)
            .toList()
        : null;
  }

  private static boolean isSealedInterface(Class<?> type) {
    return type.isInterface() && type.isSealed();
  }

  private static NamedType named(Class<?> type) {
    return new NamedType(type, type.getSimpleName());
  }
}
