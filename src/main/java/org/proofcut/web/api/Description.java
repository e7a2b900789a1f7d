package org.proofcut.web.api;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.PathItem.HttpMethod;

/** Adds to the description of every operation how it can be refused, by one rule for all. */
public final class Description implements OASFilter {

  @Override
  public void filterOpenAPI(OpenAPI api) {
    api.getPaths().getPathItems().forEach(Description::describe);
  }

  private static void describe(String path, PathItem item) {
    item.getOperations()
        .forEach(
            (method, operation) ->
                refusals(path, method, operation)
                    .forEach(
                        kind ->
                            operation
                                .getResponses()
                                .addAPIResponse(
                                    Integer.toString(kind.status()),
                                    OASFactory.createAPIResponse()
                                        .description(kind.meaning())
                                        .content(content()))));
  }

  private static List<ProblemKind> refusals(String path, HttpMethod method, Operation operation) {
    var kinds = new ArrayList<ProblemKind>();
    kinds.add(ProblemKind.ELSEWHERE);
    kinds.add(ProblemKind.NOT_ACCEPTABLE);
    kinds.add(ProblemKind.FAULT);
    if (path.contains("{")) {
      kinds.add(ProblemKind.NOT_THERE);
    }
    if (operation.getRequestBody() != null) {
      kinds.add(ProblemKind.NOT_JSON);
      kinds.add(ProblemKind.TOO_LARGE);
      kinds.add(ProblemKind.FIELDS);
    }
    if (method == HttpMethod.POST || method == HttpMethod.PUT) {
      kinds.add(ProblemKind.NOT_AS_JSON);
    }
    if (path.endsWith("/begin")
        || path.endsWith("/acts")
        || path.endsWith("/plan")
        || path.endsWith("/weights")
        || path.contains("/of-job/")
        || path.endsWith("/standing")) {
      kinds.add(ProblemKind.NOT_NOW);
    }
    return kinds;
  }

  private static org.eclipse.microprofile.openapi.models.media.Content content() {
    return OASFactory.createContent()
        .addMediaType(
            ProblemDetail.MEDIA_TYPE,
            OASFactory.createMediaType()
                .schema(OASFactory.createSchema().ref("#/components/schemas/ProblemDetail")));
  }
}
