# The service as an image: no root, nothing written but below /data. See deploy/operating.md.
FROM mcr.microsoft.com/dotnet/sdk:10.0-noble AS build
ARG TARGETARCH=amd64
WORKDIR /source
COPY global.json Directory.Build.props Directory.Packages.props .editorconfig ./
COPY config config
COPY deploy deploy
COPY src src
RUN case "$TARGETARCH" in amd64) kind=linux-x64 ;; arm64) kind=linux-arm64 ;; *) echo "no $TARGETARCH here"; exit 1 ;; esac \
    && CI=true dotnet publish src/StudioBot.Host -c Release -r "$kind" --self-contained -o /program \
    && mkdir /empty

# With certificates and time zones: the chat service needs the ones, the studio's days and nights the others.
FROM mcr.microsoft.com/dotnet/runtime-deps:10.0-noble
COPY --from=build /program /program
# What a volume is made from: its owner is who runs the program.
COPY --from=build --chown=1654:1654 --chmod=700 /empty /data
ENV Studio__Data=/data \
    DOTNET_EnableDiagnostics=0
VOLUME /data
USER 1654:1654
HEALTHCHECK --interval=1m --timeout=10s --start-period=1m --retries=3 CMD ["/program/studiobot", "health"]
ENTRYPOINT ["/program/studiobot"]
CMD ["serve"]
